package trialwood.analysis.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Answer;

class TrialModelTest {

  /** Ten varieties at six sites in two years, one plot each; Immer, Hayes and Powers (1934). */
  private static List<PlotValue> barley() throws IOException {
    var format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    var file = Path.of("src/test/resources/reference/data-barley.csv");
    var plots = new ArrayList<PlotValue>();
    try (CSVParser lines = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      for (CSVRecord line : lines) {
        plots.add(
            plot(
                line.get("variety"),
                line.get("site"),
                Integer.parseInt(line.get("year")),
                "1",
                Double.parseDouble(line.get("yield"))));
      }
    }
    return plots;
  }

  private static PlotValue plot(String entry, String site, int season, String block, double value) {
    return new PlotValue(
        entry,
        new SiteSeason(site, season),
        block,
        "%s %s %s".formatted(site, block, entry),
        value);
  }

  private static TrialFit fit(List<PlotValue> plots) {
    return TrialModel.of(plots).value().orElseThrow();
  }

  /** Eight entries, three sites, four blocks, the same plots in three seasons. */
  private static List<PlotValue> seasons(long seed) {
    var numbers = new SplittableRandom(seed);
    var plots = new ArrayList<PlotValue>();
    for (int entry = 0; entry < 8; entry++) {
      double own = 2 * numbers.nextGaussian();
      for (String site : List.of("hill", "flat", "home")) {
        double there = numbers.nextGaussian();
        for (int block = 0; block < 4; block++) {
          double plot = numbers.nextGaussian();
          for (int season = 2024; season < 2027; season++) {
            double value = 20 + own + there + plot + 0.5 * numbers.nextGaussian();
            plots.add(plot("E" + entry, site, season, "B" + block, value));
          }
        }
      }
    }
    return plots;
  }

  @Test
  void barley_means_are_those_of_the_mixed_model_in_r() throws IOException {
    // lme4 1.1.31 with emmeans 1.8.4.1: rows "barley, blue" of 06-multisite.csv
    TrialFit fit = fit(barley());
    assertThat(fit.means().mean("Glabron")).isCloseTo(33.3416658333338, within(1e-9));
    assertThat(fit.means().se("Glabron")).isCloseTo(1.71926875619235, within(1e-5));
    assertThat(fit.means().meanSed()).isCloseTo(2.43141319237153, within(1e-5));
  }

  @Test
  void barley_heritability_is_that_of_the_mixed_model_in_r() throws IOException {
    // rows "barley, heritability" of 06-multisite.csv
    var heritability = fit(barley()).heritability().value().orElseThrow();
    assertThat(heritability.cullis()).isCloseTo(0.696708973496815, within(1e-6));
  }

  @Test
  void one_plot_in_a_site_season_leaves_its_interaction_in_the_residual() throws IOException {
    assertThat(fit(barley()).leftOut())
        .extracting(TrialFit.LeftOut::term)
        .containsExactly("site:block", "entry:site-season", "plot");
  }

  @Test
  void plots_that_stand_for_seasons_carry_every_term() {
    TrialFit fit = fit(seasons(1));
    assertThat(fit.leftOut()).isEmpty();
    assertThat(fit.fixed().variance("plot")).isCloseTo(1, within(0.5));
  }

  @Test
  void an_entry_with_fewer_plots_is_drawn_harder_to_the_mean() {
    List<PlotValue> all = seasons(2);
    List<PlotValue> fewer =
        all.stream()
            .filter(plot -> !plot.entry().equals("E0") || plot.at().site().equals("hill"))
            .toList();
    var full = shrunken(all, "E0");
    var thin = shrunken(fewer, "E0");
    assertThat(thin.reliability()).isLessThan(full.reliability());
    assertThat(thin.se()).isGreaterThan(full.se());
  }

  private static TrialFit.ShrunkenMean shrunken(List<PlotValue> plots, String entry) {
    return fit(plots).shrunkenMeans(Better.HIGHER).value().orElseThrow().stream()
        .filter(mean -> mean.entry().equals(entry))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void three_places_among_the_best_three_are_shared_out() {
    var means = fit(seasons(3)).shrunkenMeans(Better.HIGHER).value().orElseThrow();
    assertThat(means.stream().mapToDouble(TrialFit.ShrunkenMean::amongBest).sum())
        .isCloseTo(3, within(1e-9));
    assertThat(means.get(0).amongBest()).isGreaterThan(means.get(7).amongBest());
  }

  @Test
  void a_new_site_season_is_less_sure_than_the_average() {
    TrialFit fit = fit(seasons(4));
    List<TrialFit.ShrunkenMean> ranked = fit.shrunkenMeans(Better.HIGHER).value().orElseThrow();
    String best = ranked.get(0).entry();
    String last = ranked.get(7).entry();
    double average = fit.chanceBetter(best, last, Better.HIGHER);
    double newPlace = fit.chanceBetterInNewSiteSeason(best, last, Better.HIGHER);
    assertThat(newPlace).isBetween(0.5, average);
    assertThat(fit.chanceBetter(last, best, Better.HIGHER)).isCloseTo(1 - average, within(1e-12));
    assertThat(fit.chanceBetter(best, last, Better.LOWER)).isCloseTo(1 - average, within(1e-12));
  }

  @Test
  void a_site_season_that_is_better_for_all_changes_no_difference() {
    List<PlotValue> plots = seasons(5);
    List<PlotValue> raised =
        plots.stream()
            .map(
                plot ->
                    plot.at().toString().equals("hill 2025")
                        ? new PlotValue(
                            plot.entry(), plot.at(), plot.block(), plot.plot(), plot.value() + 40)
                        : plot)
            .toList();
    assertThat(fit(raised).difference("E1", "E2"))
        .isCloseTo(fit(plots).difference("E1", "E2"), within(1e-8));
  }

  @Test
  void one_site_tells_nothing_of_others() {
    List<PlotValue> one =
        seasons(6).stream().filter(plot -> plot.at().site().equals("hill")).toList();
    assertThat(TrialModel.of(one).lack()).get().asString().startsWith("One site only");
  }

  @Test
  void entries_that_never_meet_are_named() {
    List<PlotValue> apart =
        seasons(7).stream()
            .filter(plot -> plot.entry().compareTo("E4") < 0 == plot.at().site().equals("hill"))
            .toList();
    assertThat(TrialModel.of(apart).lack())
        .get()
        .asString()
        .contains("E4, E5, E6, E7", "cannot be compared");
  }

  @Test
  void values_that_do_not_vary_are_no_trial() {
    List<PlotValue> same =
        seasons(8).stream()
            .map(plot -> new PlotValue(plot.entry(), plot.at(), plot.block(), plot.plot(), 5))
            .toList();
    assertThat(TrialModel.of(same)).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void nothing_is_lacking_and_no_error() {
    assertThat(TrialModel.of(List.of())).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void a_difference_rests_on_the_degrees_of_freedom_of_entries_and_sites() throws IOException {
    TrialFit fit = fit(barley());
    // ten varieties at six sites: 9 × 5; means of lme4 and emmeans, rows "barley, blue"
    assertThat(fit.degreesOfFreedom()).isEqualTo(45);
    double lead = fit.means().mean("Trebi") - 33.3416658333338;
    assertThat(fit.difference("Trebi", "Glabron")).isCloseTo(lead, within(1e-9));
    double sed = fit.means().sed("Trebi", "Glabron");
    assertThat(fit.chanceBetter("Trebi", "Glabron", Better.HIGHER))
        .isCloseTo(TDistribution.of(45).cumulativeProbability(lead / sed), within(1e-9));
  }

  @Test
  void in_a_new_site_season_both_entries_bring_interactions_not_yet_seen() throws IOException {
    TrialFit fit = fit(barley());
    double sed = fit.means().sed("Trebi", "Glabron");
    double unseen = fit.fixed().variance("entry:site") + fit.fixed().variance("entry:season");
    double error = Math.sqrt(sed * sed + 2 * unseen);
    assertThat(fit.chanceBetterInNewSiteSeason("Trebi", "Glabron", Better.HIGHER))
        .isCloseTo(
            TDistribution.of(45).cumulativeProbability(fit.difference("Trebi", "Glabron") / error),
            within(1e-12));
  }

  @Test
  void two_sites_are_enough_and_five_entries_can_be_shrunken() {
    List<PlotValue> two =
        seasons(9).stream().filter(plot -> !plot.at().site().equals("home")).toList();
    assertThat(fit(two).degreesOfFreedom()).isEqualTo(7);
    List<PlotValue> five = two.stream().filter(plot -> plot.entry().compareTo("E5") < 0).toList();
    assertThat(fit(five).shrunkenMeans(Better.HIGHER).value().orElseThrow()).hasSize(5);
    List<PlotValue> four = five.stream().filter(plot -> plot.entry().compareTo("E4") < 0).toList();
    assertThat(fit(four).shrunkenMeans(Better.HIGHER).lack())
        .hasValue("4 entries are too few to judge how entries vary.");
  }

  @Test
  void a_plot_without_an_entry_or_a_number_is_refused() {
    var here = new SiteSeason("hill", 2024);
    assertThatIllegalArgumentException().isThrownBy(() -> new PlotValue(" ", here, "1", "p1", 5));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PlotValue("E1", here, "1", "p1", Double.POSITIVE_INFINITY));
    assertThatIllegalArgumentException().isThrownBy(() -> new SiteSeason("", 2024));
    assertThatIllegalArgumentException().isThrownBy(() -> new TrialCell("", here, 5, 1));
  }
}
