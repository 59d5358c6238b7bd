package trialwood.analysis.buildup;

import trialwood.analysis.Belief;
import trialwood.analysis.Refuse;

/**
 * A rate that is taken as certain.
 *
 * @param rate 0 to 1
 */
public record KnownRate(double rate) implements Belief {

  public KnownRate {
    Refuse.unless(rate >= 0 && rate <= 1, "A rate lies between 0 and 1, not at %s.", rate);
  }

  @Override
  public double mean() {
    return rate;
  }

  @Override
  public double chanceAtLeast(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    return rate >= line ? 1 : 0;
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return rate;
  }
}
