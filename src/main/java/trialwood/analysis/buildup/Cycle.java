package trialwood.analysis.buildup;

import trialwood.analysis.Refuse;

/**
 * One cycle of cuttings with known rates: from every plant the same number of cuttings is stuck,
 * each roots and is weaned or not, and the plant itself lives on or not.
 *
 * @param cuttings stuck from each plant, 0 or more
 * @param rooting share that roots, 0 to 1
 * @param survival share of the rooted that lives to the next cycle, 0 to 1
 * @param stockSurvival share of the plants cut from that lives on as stock, 0 to 1
 */
public record Cycle(int cuttings, double rooting, double survival, double stockSurvival) {

  public Cycle {
    Refuse.unless(cuttings >= 0, "Cuttings cannot be fewer than none: %d.", cuttings);
    refuseUnlessShare(rooting);
    refuseUnlessShare(survival);
    refuseUnlessShare(stockSurvival);
  }

  /** Share of the cuttings that become plants. */
  public double success() {
    return rooting * survival;
  }

  /** Plants expected in place of one. */
  double mean() {
    return stockSurvival + cuttings * success();
  }

  /** Variance of the plants in place of one. */
  double variance() {
    return stockSurvival * (1 - stockSurvival) + cuttings * success() * (1 - success());
  }

  /** Most plants in place of one. */
  int most() {
    return (stockSurvival > 0 ? 1 : 0) + (success() > 0 ? cuttings : 0);
  }

  /** E(zᴺ) of the plants N in place of one. */
  Complex generating(Complex z) {
    return z.weighed(stockSurvival).times(z.weighed(success()).power(cuttings));
  }

  private static void refuseUnlessShare(double share) {
    Refuse.unless(share >= 0 && share <= 1, "A share lies between 0 and 1, not at %s.", share);
  }
}
