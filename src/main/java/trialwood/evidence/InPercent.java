package trialwood.evidence;

import trialwood.analysis.Belief;

/** A belief about a fraction of 1, told in percent, as policies draw their lines. */
public record InPercent(Belief fraction) implements Belief {

  @Override
  public double mean() {
    return 100 * fraction.mean();
  }

  @Override
  public double chanceAtLeast(double line) {
    return fraction.chanceAtLeast(line / 100);
  }

  @Override
  public double quantile(double probability) {
    return 100 * fraction.quantile(probability);
  }
}
