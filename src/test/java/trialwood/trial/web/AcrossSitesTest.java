package trialwood.trial.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.PlotValue;
import trialwood.analysis.trial.SiteSeason;
import trialwood.analysis.trial.TrialCell;

class AcrossSitesTest {

  private static List<PlotValue> plots(List<String> sites) {
    var numbers = new SplittableRandom(11);
    var plots = new ArrayList<PlotValue>();
    for (int entry = 0; entry < 6; entry++) {
      double own = 3 * entry + numbers.nextGaussian();
      for (String site : sites) {
        double there = numbers.nextGaussian();
        for (int block = 1; block < 4; block++) {
          double plot = 0.5 * numbers.nextGaussian();
          for (int season = 2024; season < 2026; season++) {
            plots.add(
                new PlotValue(
                    entry == 0 ? "CK" : "E" + entry,
                    new SiteSeason(site, season),
                    "" + block,
                    "%s-%d-%d".formatted(site, block, entry),
                    own + there + plot + 0.3 * numbers.nextGaussian()));
          }
        }
      }
    }
    return plots;
  }

  private static List<TrialCell> cells(List<PlotValue> plots) {
    Map<String, Map<SiteSeason, Double>> means =
        plots.stream()
            .collect(
                Collectors.groupingBy(
                    PlotValue::entry,
                    Collectors.groupingBy(
                        PlotValue::at, Collectors.averagingDouble(PlotValue::value))));
    return means.entrySet().stream()
        .flatMap(
            entry ->
                entry.getValue().entrySet().stream()
                    .map(at -> new TrialCell(entry.getKey(), at.getKey(), at.getValue(), 3)))
        .toList();
  }

  private static AcrossSites across(List<PlotValue> plots) {
    return AcrossSites.of(plots, cells(plots), Optional.of(Better.HIGHER), "CK");
  }

  @Test
  void plots_at_several_sites_are_read_by_the_mixed_model() {
    AcrossSites across = across(plots(List.of("hill", "flat", "home")));
    assertThat(across.method()).contains("mixed model over 108 plot values");
    assertThat(across.means()).hasSize(6);
    assertThat(across.shares().stream().mapToDouble(AcrossSites.Share::part).sum())
        .isCloseTo(1, within(1e-9));
    assertThat(across.shares())
        .extracting(AcrossSites.Share::term)
        .contains("entry × site", "plot", "block", "plot error");
    assertThat(across.ranking().get(0).mean().entry()).isEqualTo("E5");
    assertThat(across.ranking())
        .filteredOn(one -> one.mean().entry().equals("CK"))
        .allMatch(check -> check.ahead() == null);
  }

  @Test
  void one_site_is_read_by_least_squares_and_the_page_says_why() {
    AcrossSites across = across(plots(List.of("hill")));
    assertThat(across.method()).contains("least squares", "One site only");
    assertThat(across.means()).hasSize(6);
    assertThat(across.ranking()).isEmpty();
  }

  @Test
  void a_trait_nobody_looked_at_has_no_means_and_says_so() {
    AcrossSites across = AcrossSites.of(List.of(), List.of(), Optional.empty(), "CK");
    assertThat(across.means()).isEmpty();
    assertThat(across.why()).isEqualTo("There is no value yet.");
  }

  @Test
  void a_trait_without_a_better_way_ranks_nobody() {
    List<PlotValue> plots = plots(List.of("hill", "flat", "home"));
    assertThat(AcrossSites.of(plots, cells(plots), Optional.empty(), "CK").ranking()).isEmpty();
  }

  @Test
  void the_entry_that_changes_places_has_the_largest_share_of_the_interaction() {
    // by hand: A and B move alike, C against them; interaction rows (−1, 1), (−1, 1), (2, −2)
    List<TrialCell> cells =
        List.of(
            cell("A", "hill", 2025, 1),
            cell("A", "flat", 2025, 7),
            cell("B", "hill", 2025, 2),
            cell("B", "flat", 2025, 8),
            cell("C", "hill", 2025, 6),
            cell("C", "flat", 2025, 6),
            cell("A", "home", 2025, 4),
            cell("B", "home", 2025, 5),
            cell("C", "home", 2025, 6));
    List<Steadiness> steady = Steadiness.of(cells, Better.HIGHER);
    assertThat(steady).extracting(Steadiness::entry).endsWith("C");
    assertThat(steady.get(2).shareOfInteraction()).isCloseTo(2.0 / 3, within(1e-9));
    assertThat(steady.get(2).slope()).isCloseTo(0, within(1e-9));
  }

  @Test
  void a_site_season_without_every_entry_tells_nothing_of_steadiness() {
    assertThat(
            Steadiness.of(
                List.of(cell("A", "hill", 2025, 1), cell("B", "flat", 2025, 2)), Better.HIGHER))
        .isEmpty();
  }

  private static TrialCell cell(String entry, String site, int season, double mean) {
    return new TrialCell(entry, site, season, mean, 1);
  }
}
