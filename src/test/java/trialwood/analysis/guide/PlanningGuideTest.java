package trialwood.analysis.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trialwood.analysis.PlantingDensity;
import trialwood.analysis.buildup.CuttingsNeeded;
import trialwood.analysis.buildup.Cycle;
import trialwood.analysis.buildup.StockBuildUp;
import trialwood.analysis.buildup.StockDistribution;
import trialwood.analysis.rate.FurtherTrays;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.Trays;
import trialwood.analysis.rate.TrialSize;

/** Building up and planning. */
class PlanningGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void stock_build_up() {
    Cycle cycle = new Cycle(4, 0.7, 0.9, 0);
    StockBuildUp stock = new StockBuildUp(3, List.of(cycle, cycle, cycle));
    StockDistribution plants = stock.distribution().value().orElseThrow();
    GUIDE.states(
        "three cycles, no stock kept: %.0f expected, but the chance of 40 or more is %.2f and 1 time"
            + " in 20 there are %d or fewer.",
        stock.expected().mean(), plants.chanceAtLeast(40), plants.quantile(0.05));
    CuttingsNeeded known = CuttingsNeeded.atRate(100, 0.72, 0.95).value().orElseThrow();
    CuttingsNeeded tried = CuttingsNeeded.afterTrial(100, 31, 40, 0.95).value().orElseThrow();
    GUIDE.states(
        "100 rooted plants wanted at 72 %%: %d cuttings suffice on average, %d with 95 %%"
            + " confidence; if all that is known is 31 of 40, it takes %d.",
        known.expectedOnly(), known.cuttings(), tried.cuttings());
  }

  @Test
  void size_of_a_rooting_trial() {
    Object[] trays =
        Stream.of(12, 24, 48, 96)
            .map(n -> TrialSize.forHalfWidth(0.1, n, 0.8, 0.05, 0.95).value().orElseThrow().trays())
            .toArray();
    GUIDE.states(
        "For ± 10 points at p = 80 %% and ρ = 0.05: %d trays of 12, %d of 24, %d of 48 or %d of 96.",
        trays);
  }

  @Test
  void further_trays() {
    FurtherTrays plan =
        FurtherTrays.after(
            TrayPosterior.of(Trays.of24(20, 18, 17)),
            24,
            (trays, share) -> share.chanceAtLeast(0.7) >= 0.9 || share.chanceAtLeast(0.65) <= 0.05);
    GUIDE.states(
        "one further tray of 24 settles it in %.0f %%, three in %.0f %%, six in %.0f %% of the"
            + " futures (simulation error %.1f points); twenty are not enough for 80 %%.",
        100 * plan.chanceWith(1).settled(),
        100 * plan.chanceWith(3).settled(),
        100 * plan.chanceWith(6).settled(),
        100 * plan.chanceWith(6).simulationError());
    assertThat(plan.fewest(0.8).lack()).isPresent();
  }

  @Test
  void plants_on_the_land() {
    PlantingDensity density = PlantingDensity.feet(2, 10);
    GUIDE.states(
        "2 ft × 10 ft: %,.0f plants an acre, %,.0f a hectare; 12,000 seedlings need %.2f acres.",
        density.perAcre(), density.perHectare(), density.acresFor(12_000));
  }
}
