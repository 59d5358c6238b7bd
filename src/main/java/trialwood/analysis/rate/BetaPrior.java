package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import trialwood.analysis.Refuse;

/**
 * What is believed of a proportion before the counts: Beta(a, b), mean a/(a + b). Weights from ½
 * upwards are computed to full accuracy; smaller ones pile the belief up at an end and lose digits.
 *
 * @param a weight of the successes, above 0
 * @param b weight of the failures, above 0
 */
public record BetaPrior(double a, double b) {

  public BetaPrior {
    Refuse.unless(
        a > 0 && b > 0 && Double.isFinite(a) && Double.isFinite(b),
        "The weights of a prior must be positive numbers, not %s and %s.",
        a,
        b);
  }

  public double mean() {
    return a / (a + b);
  }

  /**
   * Log density of the angle v when the proportion is sin² v, 0 &lt; v &lt; π/2. On this scale the
   * ends of a Beta(½, ½) are flat, which keeps quadrature exact there.
   */
  double logDensityOfAngle(double angle) {
    return logConstant()
        + (2 * a - 1) * Math.log(Math.sin(angle))
        + (2 * b - 1) * Math.log(Math.cos(angle));
  }

  /** log(2 / B(a, b)), read off the density at ½. */
  private double logConstant() {
    return BetaDistribution.of(a, b).logDensity(0.5) + (a + b - 1) * Math.log(2);
  }
}
