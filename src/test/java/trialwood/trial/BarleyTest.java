package trialwood.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.analysis.EntryMeans;
import trialwood.crop.Better;
import trialwood.observation.Observations;

/**
 * The whole way from plots to entry means on published yields: ten barleys at six sites in two
 * years, one plot each, as shipped in R's lattice 0.20.45. Data: Immer, F. R., Hayes, H. K. and
 * Powers, L. (1934) Statistical determination of barley varietal adaptation. Journal of the
 * American Society of Agronomy 26, 403–419. Expected: R 4.2.2 {@code lm} with adjusted means, in
 * {@code reference/06-multisite.csv}, case barley, method lm_blue.
 */
@TrialGround.OnTrialGround
class BarleyTest {

  private static final Path REFERENCE = Path.of("src/test/resources/reference");

  private @Autowired TrialGround ground;
  private @Autowired TrialPlanting planting;
  private @Autowired SeasonMeans means;
  private @Autowired Observations observations;

  @Test
  void entry_means_of_the_published_barleys_are_those_of_the_reference() throws IOException {
    List<CSVRecord> yields = rows("data-barley.csv");
    Set<String> sites = distinct(yields, "site");
    Set<String> varieties = distinct(yields, "variety");
    UUID yield = ground.trait("YIELD", "bu/acre", Better.HIGHER, 5);
    UUID trial = ground.trial("BARLEY", 1, varieties.toArray(String[]::new));
    for (String site : sites) {
      ground.site(site, site);
      planting.standAt(trial, ground.id(site), LocalDate.of(1931, 4, 15));
      ground.plantInOrder(trial, "B", site, 1, varieties.toArray(String[]::new));
    }
    List<String> order = List.copyOf(varieties);
    for (CSVRecord row : yields) {
      ground.see(
          "B-%s-1-%d".formatted(row.get("site"), order.indexOf(row.get("variety")) + 1),
          "YIELD",
          row.get("year") + "-08-15",
          Double.parseDouble(row.get("yield")));
    }

    observations.flush();
    TraitSeasons seasons = means.of(yield, Set.of(trial), LocalDate.of(1933, 1, 1));

    assertThat(seasons.cells()).hasSize(120);
    assertThat(seasons.gaps()).isEmpty();
    EntryMeans fitted = EntryMeans.of(seasons.cells()).value().orElseThrow();
    int checked = 0;
    for (CSVRecord expected : rows("06-multisite.csv")) {
      if (expected.get("case").equals("barley") && expected.get("method").equals("lm_blue")) {
        double value = Double.parseDouble(expected.get("value"));
        double tolerance =
            Double.parseDouble(expected.get("tol_abs"))
                + Math.abs(value) * Double.parseDouble(expected.get("tol_rel"));
        String key = expected.get("key");
        double got =
            switch (expected.get("quantity")) {
              case "mean" -> fitted.of(key).mean().estimate();
              case "se" -> fitted.of(key).mean().standardError();
              case "df" -> fitted.degreesOfFreedom();
              default -> throw new AssertionError(expected);
            };
        assertThat(got)
            .as("%s %s", expected.get("quantity"), key)
            .isCloseTo(value, within(tolerance));
        checked++;
      }
    }
    assertThat(checked).isEqualTo(21);
  }

  private static Set<String> distinct(List<CSVRecord> rows, String column) {
    Set<String> values = new LinkedHashSet<>();
    rows.forEach(row -> values.add(row.get(column)));
    return values;
  }

  private static List<CSVRecord> rows(String file) throws IOException {
    try (Reader reader = Files.newBufferedReader(REFERENCE.resolve(file))) {
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
