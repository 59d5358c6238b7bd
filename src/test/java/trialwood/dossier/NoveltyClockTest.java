package trialwood.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against clock_examples.csv, computed from the statutes that novelty_rules.csv names row by row
 * (35 U.S.C. 102, 7 U.S.C. 2402, Regulation (EC) 2100/94 Art. 10, the Canadian act from memory).
 */
class NoveltyClockTest {

  /** The office and right behind each short name of the examples. */
  private static final Map<String, String> RULE =
      Map.of(
          "US plant patent", "United States plant patent",
          "US plant variety protection", "United States plant variety protection certificate",
          "EU CPVR", "European Union Community plant variety right",
          "Canada PBR", "Canada plant breeder right");

  private static final Grace MODEL = new Grace(1, 4, 6);
  private static final LocalDate VILLAGE_SALE = LocalDate.of(2025, 5, 3);

  static List<CSVRecord> examples() {
    return records("clock_examples.csv");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void every_example_ends_on_its_day(CSVRecord example) {
    NoveltyClock clock =
        NoveltyClock.started(
            LocalDate.parse(example.get("first_sale")),
            example.get("sold_at_home").equals("yes"),
            grace(example.get("filing")));

    assertThat(clock.last()).isEqualTo(example.get("last_filing_date_not_tree"));
    assertThat(clock.lastIfTree()).isEqualTo(example.get("last_filing_date_tree_or_vine"));
  }

  @Test
  void a_sale_at_home_leaves_a_year() {
    NoveltyClock clock = NoveltyClock.started(VILLAGE_SALE, true, MODEL);

    assertThat(clock.last()).isEqualTo("2026-05-03");
    assertThat(clock.dependsOnTree()).isFalse();
    assertThat(clock.daysLeft(LocalDate.of(2025, 10, 29))).isEqualTo(186);
    assertThat(clock.daysLeft(LocalDate.of(2026, 3, 20))).isEqualTo(44);
  }

  @Test
  void a_sale_elsewhere_leaves_four_and_whether_six_is_a_question() {
    NoveltyClock clock = NoveltyClock.started(VILLAGE_SALE, false, MODEL);

    assertThat(clock.last()).isEqualTo("2029-05-03");
    assertThat(clock.lastIfTree()).isEqualTo("2031-05-03");
    assertThat(clock.dependsOnTree()).isTrue();
  }

  @Test
  void the_last_day_is_in_time_and_the_next_is_not() {
    NoveltyClock clock = NoveltyClock.started(VILLAGE_SALE, true, MODEL);

    assertThat(clock.isMetBy(clock.last())).isTrue();
    assertThat(clock.daysLeft(clock.last())).isZero();
    assertThat(clock.isMetBy(clock.last().plus(1, ChronoUnit.DAYS))).isFalse();
  }

  private static Grace grace(String filing) {
    CSVRecord rule =
        records("novelty_rules.csv").stream()
            .filter(
                row -> (row.get("jurisdiction") + " " + row.get("right")).equals(RULE.get(filing)))
            .findFirst()
            .orElseThrow();
    return new Grace(
        Integer.parseInt(rule.get("home_grace_years")),
        Integer.parseInt(rule.get("abroad_grace_years")),
        Integer.parseInt(rule.get("abroad_grace_years_tree_or_vine")));
  }

  private static List<CSVRecord> records(String file) {
    try (InputStream in =
        NoveltyClockTest.class.getResourceAsStream("/reference/standards/" + file)) {
      return CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(Objects.requireNonNull(in, file), StandardCharsets.UTF_8))
          .getRecords();
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
