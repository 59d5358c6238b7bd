package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.analysis.trial.EntryMeans;
import trialwood.crop.Traits;
import trialwood.trial.SeasonMeans;
import trialwood.trial.TraitSeasons;
import trialwood.trial.Trials;

/**
 * The whole way from files to entry means on published yields: ten barleys at six sites in two
 * years, one plot each, as shipped in R's lattice 0.20.45. Data: Immer, F. R., Hayes, H. K. and
 * Powers, L. (1934) Statistical determination of barley varietal adaptation. Journal of the
 * American Society of Agronomy 26, 403–419. Expected: R 4.2.2 {@code lm} with adjusted means, in
 * {@code reference/06-multisite.csv}, case barley, method lm_blue.
 */
@ExchangeTest
class BarleyTest {

  private static final Path REFERENCE = Path.of("src/test/resources/reference");
  private static final Path FILES = Path.of("src/test/resources/barley");

  @Autowired private Flyway flyway;
  @Autowired private Sheets sheets;
  @Autowired private Import imports;
  @Autowired private Traits traits;
  @Autowired private Trials trials;
  @Autowired private SeasonMeans means;

  @BeforeEach
  void an_empty_record() {
    flyway.clean();
    flyway.migrate();
  }

  @Test
  void the_files_say_what_was_published() throws IOException {
    Map<String, String> siteNames =
        rows(FILES.resolve("03-sites.csv")).stream()
            .collect(Collectors.toMap(row -> row.get("site"), row -> row.get("name")));
    Map<String, CSVRecord> plots =
        rows(FILES.resolve("63-plots.csv")).stream()
            .collect(Collectors.toMap(row -> row.get("plot"), row -> row));

    List<String> filed =
        rows(FILES.resolve("65-observations.csv")).stream()
            .map(
                row -> {
                  CSVRecord plot = plots.get(row.get("unit"));
                  return String.join(
                      " | ",
                      siteNames.get(plot.get("site")),
                      row.get("on").substring(0, 4),
                      plot.get("accession"),
                      row.get("value"));
                })
            .toList();

    assertThat(filed)
        .hasSize(120)
        .containsExactlyElementsOf(
            rows(REFERENCE.resolve("data-barley.csv")).stream()
                .map(
                    row ->
                        String.join(
                            " | ",
                            row.get("site"),
                            row.get("year"),
                            row.get("variety"),
                            row.get("yield")))
                .toList());
  }

  @Test
  void entry_means_of_the_imported_barleys_are_those_of_the_reference() throws IOException {
    for (Sheet sheet : sheets.all()) {
      Path file = FILES.resolve(sheet.fileName());
      if (Files.exists(file)) {
        ImportResult result = imports.take(sheet, sheet.fileName(), Files.readAllBytes(file));
        assertThat(result.problems()).as(sheet.name()).isEmpty();
        assertThat(result.kept()).as(sheet.name()).isTrue();
      }
    }

    TraitSeasons seasons =
        means.of(
            traits.findAll().get(0).id(),
            Set.of(trials.findByCode("BARLEY").orElseThrow().id()),
            LocalDate.of(1933, 1, 1));

    assertThat(seasons.cells()).hasSize(120);
    assertThat(seasons.gaps()).isEmpty();
    EntryMeans fitted = EntryMeans.of(seasons.cells()).value().orElseThrow();
    List<CSVRecord> expected =
        rows(REFERENCE.resolve("06-multisite.csv")).stream()
            .filter(row -> row.get("case").equals("barley"))
            .filter(row -> row.get("method").equals("lm_blue"))
            .toList();
    assertThat(expected)
        .hasSize(21)
        .allSatisfy(
            row -> {
              double value = Double.parseDouble(row.get("value"));
              double tolerance =
                  Double.parseDouble(row.get("tol_abs"))
                      + Math.abs(value) * Double.parseDouble(row.get("tol_rel"));
              assertThat(fittedFor(fitted, row)).isCloseTo(value, within(tolerance));
            });
  }

  private static double fittedFor(EntryMeans fitted, CSVRecord row) {
    return switch (row.get("quantity")) {
      case "mean" -> fitted.of(row.get("key")).mean().estimate();
      case "se" -> fitted.of(row.get("key")).mean().standardError();
      case "df" -> fitted.degreesOfFreedom();
      default -> throw new AssertionError(row);
    };
  }

  private static List<CSVRecord> rows(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .get()
          .parse(reader)
          .getRecords();
    }
  }
}
