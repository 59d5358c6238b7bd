package trialwood.demo;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static trialwood.demo.Sheet.rowsOf;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The trial sets of the demo nursery: the four plots average to the scenario's means exactly. */
class DemoTrialTest {

  private static final List<CSVRecord> PLOTS = rowsOf("63-plots");
  private static final Map<String, List<CSVRecord>> OBSERVED =
      rowsOf("65-observations").stream().collect(groupingBy(o -> o.get("unit")));

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      textBlock =
          """
          A18-01, 8.2 9.8 7.3    9.7 10.5 -   10.1 11.4 8.9
          A18-04, 7.4 8.4 6.4    9.3 10.7 -   9.6 10.4 7.6
          C18-03, 11.1 11.2 8.3  11.1 12.6 -  11.8 12.7 10.1
          C18-04, 9.6 10.5 8.0   10.9 11.0 -  11.2 11.3 9.0
          D18-02, 9.1 10.7 6.9   11.0 13.2 -  11.1 12.5 8.2
          E18-02, 8.2 12.8 3.1   9.7 13.9 -   9.4 14.3 4.3
          CK-1,   8.6 8.8 6.5    9.2 10.6 -   9.2 10.8 7.8
          CK-2,   7.7 8.6 5.7    8.3 10.0 -   9.0 10.5 7.1
          """)
  void weeks_in_bloom_average_to_the_table(String entry, String means) {
    checkMeans("BLOOM", entry, List.of("2024", "2025", "2026"), means);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      textBlock =
          """
          A18-01, 7.6 9.5 2.6    9.4 11.7 -   7.5 9.0 2.7
          A18-04, 5.7 7.9 2.1    7.7 9.3 -    6.4 7.6 2.3
          C18-03, 5.4 5.4 1.5    7.0 7.4 -    5.5 6.8 1.6
          C18-04, 17.2 20.2 4.8  18.6 21.8 -  13.7 18.5 5.5
          D18-02, 9.1 10.9 2.9   11.9 12.0 -  9.7 12.6 3.1
          E18-02, 5.3 7.2 2.3    8.5 11.7 -   6.3 8.8 2.6
          CK-1,   8.9 8.9 3.4    14.5 15.9 -  9.1 12.0 3.6
          CK-2,   30.0 31.1 8.3  34.9 37.1 -  31.3 30.3 8.7
          """)
  void leaf_spot_averages_to_the_table(String entry, String means) {
    checkMeans("LSREL", entry, List.of("2024", "2025", "2026"), means);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      textBlock =
          """
          A18-01, 5 2 13   3 1 8
          A18-04, 7 2 20   5 2 13
          C18-03, 6 2 16   4 1 10
          C18-04, 7 3 26   5 2 13
          D18-02, 13 4 45  9 2 17
          E18-02, 11 3 21  7 2 25
          CK-1,   8 2 18   4 1 10
          CK-2,   12 3 25  8 3 16
          """)
  void winter_dieback_averages_to_the_table(String entry, String means) {
    checkMeans("DIEBACK", entry, List.of("2025", "2026"), means);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      textBlock =
          """
          A18-01, 113 129 106
          A18-04, 183 197 162
          C18-03, 148 161 138
          C18-04, 163 178 141
          D18-02, 144 151 126
          E18-02, 167 178 153
          CK-1,   172 182 152
          CK-2,   175 184 153
          """)
  void height_averages_to_the_table(String entry, String means) {
    checkMeans("HEIGHT", entry, List.of("2026"), means);
  }

  @Test
  void every_block_holds_every_entry_once() {
    for (var trial : List.of("T1", "T2")) {
      var entries =
          rowsOf("61-trial-entries").stream()
              .filter(e -> e.get("trial").equals(trial))
              .map(e -> e.get("accession"))
              .toList();
      PLOTS.stream()
          .filter(p -> p.get("trial").equals(trial))
          .collect(groupingBy(p -> p.get("site") + " block " + p.get("block")))
          .forEach(
              (block, plots) ->
                  assertThat(plots.stream().map(p -> p.get("accession")))
                      .as(block)
                      .containsExactlyInAnyOrderElementsOf(entries));
    }
  }

  @Test
  void no_two_plots_stand_on_one_place() {
    var places = new HashSet<String>();
    for (var p : PLOTS) {
      var place = p.get("trial") + p.get("site") + p.get("row") + "/" + p.get("column");
      assertThat(places.add(place)).as(p.get("plot")).isTrue();
    }
    assertThat(PLOTS.stream().collect(toMap(p -> p.get("trial"), p -> 1, Integer::sum)))
        .isEqualTo(Map.of("T1", 96, "T2", 24));
  }

  @Test
  void nothing_is_taken_for_bloom_or_leaf_spot_after_the_hail() {
    var hail =
        rowsOf("64-site-events").stream().filter(e -> e.get("kind").equals("hail")).findFirst();
    var traits = List.of(hail.orElseThrow().get("traits").split(" "));

    var atCorrowHill =
        PLOTS.stream()
            .filter(p -> p.get("site").equals("CH"))
            .flatMap(p -> OBSERVED.get(p.get("plot")).stream())
            .filter(o -> traits.contains(o.get("trait")))
            .filter(o -> o.get("on").compareTo(hail.get().get("void_from")) >= 0)
            .filter(o -> o.get("on").compareTo(hail.get().get("void_until")) <= 0)
            .toList();

    assertThat(atCorrowHill).hasSize(64).allMatch(o -> o.get("none_because").equals("void"));
  }

  /** Means in the order of the years, within a year HB SG CH; a dash where hail took the season. */
  private static void checkMeans(String trait, String entry, List<String> years, String means) {
    var expected = List.of(means.trim().split(" +"));
    var sites = List.of("HB", "SG", "CH");
    for (int i = 0; i < expected.size(); i++) {
      var site = sites.get(i % 3);
      var year = years.get(i / 3);
      var values = values(trait, entry, site, year);
      if (expected.get(i).equals("-")) {
        assertThat(values).isEmpty();
      } else {
        var sum = values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(values).as("%s %s", site, year).hasSize(4);
        assertThat(sum)
            .as("%s %s", site, year)
            .isEqualByComparingTo(new BigDecimal(expected.get(i)).multiply(BigDecimal.valueOf(4)));
      }
    }
  }

  private static List<BigDecimal> values(String trait, String entry, String site, String year) {
    return PLOTS.stream()
        .filter(p -> p.get("trial").equals("T1"))
        .filter(p -> p.get("accession").equals(entry) && p.get("site").equals(site))
        .flatMap(p -> OBSERVED.get(p.get("plot")).stream())
        .filter(o -> o.get("trait").equals(trait) && o.get("on").startsWith(year))
        .filter(o -> !o.get("value").isEmpty())
        .map(o -> new BigDecimal(o.get("value")))
        .toList();
  }
}
