package trialwood.analysis.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;
import trialwood.analysis.reference.DataFile;
import trialwood.analysis.reference.ReferenceFolder;
import trialwood.analysis.reference.Row;

class EntryMeansTest {

  private static final ReferenceFolder FOLDER = ReferenceFolder.ours();

  /** The additive models of the multi-site file: entry + site-season. */
  static Stream<Row> overSiteSeasons() {
    return FOLDER
        .rows("06-multisite.csv")
        .filter(row -> row.method().equals("lm_blue"))
        .filter(row -> List.of("barley", "barley-missing").contains(row.example()));
  }

  /** Blocks of one trial are to the additive model what site-seasons are. */
  static Stream<Row> overBlocks() {
    return FOLDER
        .rows("05-anova.csv")
        .filter(row -> List.of("adjusted_means", "pairwise").contains(row.method()))
        .filter(row -> row.has("block") || row.has("factor"))
        .filter(row -> !row.has("transform") && !row.example().equals("insectsprays-sqrt"))
        .filter(row -> !row.quantity().matches("p_(bonferroni|holm|bh)"));
  }

  @ParameterizedTest
  @MethodSource("overSiteSeasons")
  void adjusted_means_agree_with_R(Row row) {
    EntryMeans fit = fitted(row.input("data"), "yield", "variety", EntryMeansTest::siteSeasons);
    assertMet(
        row,
        switch (row.quantity()) {
          case "mean" -> fit.of(row.key()).mean().estimate();
          case "se" -> fit.of(row.key()).mean().standardError();
          case "df" -> fit.degreesOfFreedom();
          default -> throw new IllegalStateException(row.quantity());
        });
  }

  @ParameterizedTest
  @MethodSource("overBlocks")
  void means_intervals_and_differences_over_blocks_agree_with_R(Row row) {
    String factor = row.input(row.has("factor") ? "factor" : "treatment");
    EntryMeans fit =
        fitted(
            row.input("data"),
            row.input("response"),
            factor,
            data ->
                row.has("block") ? blocks(data.text(row.input("block"))) : onePlace(data.size()));
    if (row.method().equals("pairwise")) {
      String[] pair = row.key().split(" vs ");
      StudentBelief difference = fit.difference(pair[0], pair[1]);
      double below = 1 - difference.chanceAtLeast(0);
      assertMet(
          row,
          switch (row.quantity()) {
            case "difference" -> difference.estimate();
            case "sed" -> difference.standardError();
            case "t" -> difference.estimate() / difference.standardError();
            case "p_unadjusted" -> 2 * Math.min(below, difference.chanceAtLeast(0));
            default -> throw new IllegalStateException(row.quantity());
          });
    } else {
      assertMet(
          row,
          switch (row.quantity()) {
            case "mean" -> fit.of(row.key()).mean().estimate();
            case "se" -> fit.of(row.key()).mean().standardError();
            case "df" -> fit.degreesOfFreedom();
            case "lower" -> fit.of(row.key()).mean().interval(row.number("conf")).low();
            case "upper" -> fit.of(row.key()).mean().interval(row.number("conf")).high();
            default -> throw new IllegalStateException(row.quantity());
          });
    }
  }

  @Test
  void new_names_and_another_order_change_nothing() {
    List<TrialCell> cells = barley();
    var renamed = new ArrayList<TrialCell>();
    for (TrialCell cell : cells) {
      renamed.add(new TrialCell(renamed(cell.entry()), cell.at(), cell.mean(), cell.plots()));
    }
    Collections.shuffle(renamed, new Random(11));
    EntryMeans before = EntryMeans.of(cells).value().orElseThrow();
    EntryMeans after = EntryMeans.of(renamed).value().orElseThrow();
    for (AdjustedMean mean : before.means()) {
      AdjustedMean same = after.of(renamed(mean.entry()));
      assertThat(same.cells()).isEqualTo(mean.cells());
      assertThat(same.mean().estimate()).isCloseTo(mean.mean().estimate(), within(1e-11));
      assertThat(same.mean().standardError()).isCloseTo(mean.mean().standardError(), within(1e-11));
    }
  }

  @Test
  void two_entries_in_one_place_are_a_two_sample_difference() {
    double[] candidate = {62, 58, 71, 66};
    double[] check = {55, 60, 57};
    var cells = new ArrayList<TrialCell>();
    for (double value : candidate) {
      cells.add(new TrialCell("candidate", "yard", 2024, value, 1));
    }
    for (double value : check) {
      cells.add(new TrialCell("check", "yard", 2024, value, 1));
    }
    StudentBelief byModel =
        EntryMeans.of(cells).value().orElseThrow().difference("candidate", "check");
    StudentBelief bySamples =
        SampleDifference.between(PlantSample.of(candidate), PlantSample.of(check))
            .value()
            .orElseThrow()
            .difference();
    assertThat(byModel.estimate()).isCloseTo(bySamples.estimate(), within(1e-12));
    assertThat(byModel.standardError()).isCloseTo(bySamples.standardError(), within(1e-12));
    assertThat(byModel.degreesOfFreedom()).isEqualTo(bySamples.degreesOfFreedom());
    EntryMeans fit = EntryMeans.of(cells).value().orElseThrow();
    // pooled by hand: squares 92.75 about 64.25 and 38/3 about 172/3, on 5 df
    assertThat(fit.residualSd()).isCloseTo(Math.sqrt((92.75 + 38.0 / 3) / 5), within(1e-12));
    assertThat(fit.means()).extracting(AdjustedMean::cells).containsExactly(4, 3);
  }

  @Test
  void one_degree_of_freedom_is_enough_to_judge_the_error() {
    List<TrialCell> cells =
        List.of(
            new TrialCell("A", "north", 2024, 1, 4),
            new TrialCell("B", "north", 2024, 2, 4),
            new TrialCell("A", "north", 2025, 1, 4),
            new TrialCell("B", "north", 2025, 4, 4));
    EntryMeans fit = EntryMeans.of(cells).value().orElseThrow();
    assertThat(fit.degreesOfFreedom()).isEqualTo(1);
    assertThat(fit.difference("B", "A").estimate()).isCloseTo(2, within(1e-12));
  }

  @Test
  void entries_that_never_stood_together_are_named_and_not_compared() {
    List<TrialCell> cells =
        List.of(
            new TrialCell("A", "north", 2024, 1, 4),
            new TrialCell("B", "north", 2024, 2, 4),
            new TrialCell("A", "north", 2025, 1, 4),
            new TrialCell("B", "north", 2025, 3, 4),
            new TrialCell("C", "south", 2024, 2, 4),
            new TrialCell("D", "south", 2024, 2, 4));
    assertThat(EntryMeans.of(cells).lack())
        .hasValue(
            "A, B and C, D never stood in one site-season, nor beside a common check: their means"
                + " cannot be compared.");
  }

  @Test
  void too_few_values_are_said_to_be_too_few() {
    List<TrialCell> cells =
        List.of(new TrialCell("A", "north", 2024, 1, 4), new TrialCell("B", "north", 2024, 2, 4));
    assertThat(EntryMeans.of(cells).lack())
        .hasValue("Too few values to judge the error: 2 values for 2 entries in 1 site-seasons.");
  }

  @Test
  void an_unknown_entry_and_an_empty_trial_are_refused() {
    EntryMeans fit = EntryMeans.of(barley()).value().orElseThrow();
    assertThatIllegalArgumentException().isThrownBy(() -> fit.difference("Trebi", "nobody"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> EntryMeans.of(List.of()))
        .withMessage("The trial has no values.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TrialCell("A", "north", 2024, Double.NaN, 4));
    assertThatIllegalArgumentException().isThrownBy(() -> new TrialCell("A", "north", 2024, 1, 0));
  }

  private static String renamed(String entry) {
    return new StringBuilder(entry).reverse().toString();
  }

  private static void assertMet(Row row, double got) {
    assertThat(row.meets(got)).as("%s, got %s", row, got).isTrue();
  }

  private static List<SiteSeason> siteSeasons(DataFile data) {
    List<String> sites = data.text("site");
    double[] years = data.numbers("year");
    return IntStream.range(0, years.length)
        .mapToObj(i -> new SiteSeason(sites.get(i), (int) years[i]))
        .toList();
  }

  private static List<SiteSeason> blocks(List<String> blocks) {
    return blocks.stream().map(block -> new SiteSeason(block, 1)).toList();
  }

  private static List<SiteSeason> onePlace(int values) {
    return Collections.nCopies(values, new SiteSeason("one place", 1));
  }

  private static List<TrialCell> barley() {
    return cells("data-barley-missing.csv", "yield", "variety", EntryMeansTest::siteSeasons);
  }

  private static EntryMeans fitted(
      String file, String response, String entry, Function<DataFile, List<SiteSeason>> at) {
    return EntryMeans.of(cells(file, response, entry, at)).value().orElseThrow();
  }

  private static List<TrialCell> cells(
      String file, String response, String entry, Function<DataFile, List<SiteSeason>> at) {
    DataFile data = FOLDER.data(file);
    double[] values = data.numbers(response);
    List<String> entries = data.text(entry);
    List<SiteSeason> places = at.apply(data);
    return IntStream.range(0, values.length)
        .filter(i -> !Double.isNaN(values[i]))
        .mapToObj(i -> new TrialCell(entries.get(i), places.get(i), values[i], 1))
        .toList();
  }
}
