package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;
import trialwood.analysis.rate.Allowance;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayDispersion;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.Trays;
import trialwood.analysis.time.RootingLook;
import trialwood.analysis.time.RootingTime;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.EntryMeans;
import trialwood.analysis.trial.TrialCell;

/** The examples of docs/methods.md, computed again: each sentence must stand there as it is. */
class MethodsGuideTest {

  private final String guide;

  MethodsGuideTest() throws IOException {
    guide = Files.readString(Path.of("docs/methods.md")).replaceAll("\\s+", " ");
  }

  @Test
  void plain_counts() {
    states(
        "66 rooted of 72: Wilson %s, Clopper–Pearson %s.",
        percent(BinomialInterval.wilson(66, 72, 0.95)),
        percent(BinomialInterval.clopperPearson(66, 72, 0.95)));
  }

  @Test
  void trays_of_one_batch() {
    TrayPosterior even = TrayPosterior.of(Trays.of24(22, 21, 23));
    TrayPosterior uneven = TrayPosterior.of(Trays.of24(23, 22, 9));
    TrayPosterior single = TrayPosterior.of(Trays.of24(21));
    states(
        "22, 21, 23 of 24: mean %.0f %%, 95 %% interval %s, chance of 80 %% or more %.2f.",
        100 * even.mean(), percent(even.interval(0.95)), even.chanceAtLeast(0.8));
    states(
        "23, 22, 9 of 24: mean %.0f %%, 95 %% interval %s, chance of 80 %% or more %.2f.",
        100 * uneven.mean(), percent(uneven.interval(0.95)), uneven.chanceAtLeast(0.8));
    states(
        "A single tray of 21 in 24: mean %.0f %%, 95 %% interval %s.",
        100 * single.mean(), percent(single.interval(0.95)));
  }

  @Test
  void batch_against_check() {
    RateDifference difference =
        RateDifference.between(
            TrayPosterior.of(Trays.of24(22, 21, 23)), TrayPosterior.of(Trays.of24(23, 24, 22)));
    states(
        "Candidate 22, 21, 23, check 23, 24, 22 of 24: difference %+.1f points, 95 %% interval %s"
            + " points; the chance that it is no more than 10 points below the check is %.2f.",
        100 * difference.mean(),
        points(difference.interval(0.95)),
        difference.chanceNotWorseBy(0.10));
  }

  @Test
  void spread_between_trays() {
    TrayDispersion spread = TrayDispersion.of(Trays.of24(23, 22, 9)).value().orElseThrow();
    states(
        "23, 22, 9 of 24: X² = %.1f on %d df, φ = %.1f, p = %.7f.",
        spread.chiSquare(), spread.degreesOfFreedom(), spread.phi(), spread.pValue());
  }

  @Test
  void days_to_root() {
    List<RootingLook> looks =
        List.of(
            new RootingLook(14, 6, 0),
            new RootingLook(18, 6, 1),
            new RootingLook(21, 6, 3),
            new RootingLook(24, 6, 5));
    var half = (RootingTime.Reached) RootingTime.ofHalf(looks);
    var most = (RootingTime.Reached) RootingTime.of(looks, 0.8);
    states(
        "Of 6 lifted each time, 0, 1, 3, 5 rooted on days 14, 18, 21, 24: half had rooted in"
            + " (%d, %d], 80 %% in (%d, %d].",
        half.after(), half.by(), most.after(), most.by());
  }

  @Test
  void off_types() {
    Allowance sixty = Allowance.of(60, 0.01);
    states(
        "60 plants at 1 %%: %d allowed. A sound lot is refused with %.1f %%; a lot with 5 %%"
            + " off-types passes with %.0f %%, one with 10 %% with %.1f %%.",
        sixty.allowed(),
        100 * sixty.riskOfRefusing(),
        100 * sixty.riskOfPassing(0.05),
        100 * sixty.riskOfPassing(0.10));
  }

  @Test
  void plants_beside_a_check() {
    PlantSample candidate = PlantSample.of(412, 398, 441, 405, 420, 389);
    PlantSample check = PlantSample.of(380, 402, 371, 395, 388, 366);
    SampleDifference difference = SampleDifference.between(candidate, check).value().orElseThrow();
    states(
        "Candidate 412, 398, 441, 405, 420, 389 mm: mean %.0f mm, coefficient of variation %.1f %%.",
        candidate.mean(), 100 * candidate.cv().value().orElseThrow());
    Interval interval = difference.interval(0.95);
    states(
        "Against 380, 402, 371, 395, 388, 366 mm: %+.0f mm, 95 %% interval %.0f to %.0f mm on %.0f"
            + " df, chance of being taller %.3f.",
        difference.mean(),
        interval.low(),
        interval.high(),
        difference.difference().degreesOfFreedom(),
        difference.chanceAtLeast(0));
  }

  @Test
  void entries_over_site_seasons() {
    List<TrialCell> cells =
        List.of(
            new TrialCell("A", "north", 2024, 10, 4),
            new TrialCell("B", "north", 2024, 8, 4),
            new TrialCell("C", "north", 2024, 9, 4),
            new TrialCell("A", "south", 2024, 14, 4),
            new TrialCell("B", "south", 2024, 11, 4),
            new TrialCell("C", "south", 2024, 13, 4),
            new TrialCell("A", "north", 2025, 9, 4),
            new TrialCell("B", "north", 2025, 8, 4));
    EntryMeans fit = EntryMeans.of(cells).value().orElseThrow();
    states(
        "C missed the poor season; its raw mean 11.0 becomes %.1f, with a standard error of %.2f"
            + " on %d df; A leads C by %.1f.",
        fit.of("C").mean().estimate(),
        fit.of("C").mean().standardError(),
        fit.degreesOfFreedom(),
        fit.difference("A", "C").estimate());
  }

  @Test
  void a_candidate_against_the_check_over_sites() {
    double[][] differences = {{-0.4, 0.5, 0.9}, {1.0, -0.1, 0.6}, {0.8, 1.1}};
    String[] sites = {"HB", "SG", "CH"};
    int[][] seasons = {{2024, 2025, 2026}, {2024, 2025, 2026}, {2024, 2026}};
    var cells = new ArrayList<TrialCell>();
    for (int i = 0; i < sites.length; i++) {
      for (int j = 0; j < differences[i].length; j++) {
        cells.add(new TrialCell("Kettle", sites[i], seasons[i][j], 9 + differences[i][j], 4));
        cells.add(new TrialCell("CK-1", sites[i], seasons[i][j], 9, 4));
      }
    }
    CheckComparison kettle =
        CheckComparison.of(cells, "Kettle", "CK-1", Better.HIGHER).value().orElseThrow();
    Interval interval = kettle.onAverage().value().orElseThrow().interval(0.95);
    states(
        "On average %+.2f weeks, 95 %% interval %.2f to %.2f on 2 df; chance better on average"
            + " %.2f, in a new site %.2f; ahead in %d of %d, worst %s with %.1f.",
        kettle.average(),
        interval.low(),
        interval.high(),
        kettle.chanceBetter().value().orElseThrow(),
        kettle.chanceBetterInNewSite().value().orElseThrow(),
        kettle.ahead(),
        kettle.siteSeasons().size(),
        kettle.worst().at(),
        kettle.worst().difference());
    states("Missing: %s, %s.", kettle.missing().get(0).at(), kettle.missing().get(0).reason());
  }

  @Test
  void plants_on_the_land() {
    PlantingDensity density = PlantingDensity.feet(2, 10);
    states(
        "2 ft × 10 ft: %,.0f plants an acre, %,.0f a hectare; 12,000 seedlings need %.2f acres.",
        density.perAcre(), density.perHectare(), density.acresFor(12_000));
  }

  private void states(String sentence, Object... numbers) {
    assertThat(guide).contains(String.format(Locale.ROOT, sentence, numbers));
  }

  private static String percent(Interval interval) {
    return String.format(Locale.ROOT, "%.0f–%.0f %%", 100 * interval.low(), 100 * interval.high());
  }

  private static String points(Interval interval) {
    return String.format(Locale.ROOT, "%.0f to %.0f", 100 * interval.low(), 100 * interval.high());
  }
}
