package trialwood.analysis.buildup;

import java.util.SplittableRandom;
import trialwood.analysis.Belief;
import trialwood.analysis.Refuse;

/**
 * One cycle of cuttings whose rates are only believed: each has one true value for the whole cycle.
 *
 * @param cuttings stuck from each plant, 0 or more
 * @param rooting share that roots
 * @param survival share of the rooted that lives to the next cycle
 * @param stockSurvival share of the plants cut from that lives on
 */
public record UncertainCycle(int cuttings, Belief rooting, Belief survival, Belief stockSurvival) {

  public UncertainCycle {
    Refuse.unless(cuttings >= 0, "Cuttings cannot be fewer than none: %d.", cuttings);
  }

  /** One possible truth. */
  Cycle draw(SplittableRandom random) {
    return new Cycle(
        cuttings, draw(rooting, random), draw(survival, random), draw(stockSurvival, random));
  }

  private static double draw(Belief rate, SplittableRandom random) {
    return Math.min(1, Math.max(0, rate.quantile(random.nextDouble(1e-9, 1 - 1e-9))));
  }
}
