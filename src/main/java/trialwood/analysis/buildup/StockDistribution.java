package trialwood.analysis.buildup;

import trialwood.analysis.Refuse;

/** The probability of every number of plants. */
public final class StockDistribution {

  private final double[] chances;

  StockDistribution(double[] chances) {
    this.chances = chances;
  }

  /** The largest number listed; a larger one is impossible, or all but. */
  public int most() {
    return chances.length - 1;
  }

  /** Probability of exactly that many; 0 for a number that is impossible. */
  public double chanceOf(int plants) {
    return plants < 0 || plants > most() ? 0 : chances[plants];
  }

  /** Probability of that many or more. */
  public double chanceAtLeast(int target) {
    double chance = 0;
    for (int n = most(); n >= Math.max(0, target); n--) {
      chance += chances[n];
    }
    return Math.min(1, chance);
  }

  /**
   * The smallest number k with Pr(N ≤ k) ≥ probability.
   *
   * @param probability 0 &lt; probability &lt; 1
   */
  public int quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    double below = 0;
    int plants = -1;
    while (plants < most() && below < probability) {
      plants++;
      below += chances[plants];
    }
    return plants;
  }
}
