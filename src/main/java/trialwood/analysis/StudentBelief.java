package trialwood.analysis;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * An estimate with a standard error that was itself estimated: (truth − estimate) ÷ standard error
 * has Student's distribution. A standard error of 0 leaves a point: the truth is the estimate.
 *
 * <p>Source: Student (1908) The probable error of a mean. Biometrika 6, 1–25
 *
 * @param estimate in the unit of the trait
 * @param standardError in the same unit, 0 or above
 * @param degreesOfFreedom of the standard error, above 0
 */
public record StudentBelief(double estimate, double standardError, double degreesOfFreedom)
    implements Belief {

  public StudentBelief {
    Refuse.unlessFinite(estimate, "estimate");
    Refuse.unlessFinite(standardError, "standard error");
    Refuse.unlessFinite(degreesOfFreedom, "number of degrees of freedom");
    Refuse.unless(standardError >= 0, "A standard error cannot be negative: %s.", standardError);
    Refuse.unless(
        degreesOfFreedom > 0, "Degrees of freedom must be above 0, not %s.", degreesOfFreedom);
  }

  /** The estimate: the centre of the belief (with 1 df its median, for then no mean exists). */
  @Override
  public double mean() {
    return estimate;
  }

  @Override
  public double chanceAtLeast(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    if (standardError == 0) {
      return estimate >= line ? 1 : 0;
    }
    return TDistribution.of(degreesOfFreedom)
        .survivalProbability((line - estimate) / standardError);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return standardError == 0
        ? estimate
        : estimate + standardError * Quantile.of(TDistribution.of(degreesOfFreedom), probability);
  }

  /** The belief about the negative of the value. */
  public StudentBelief negated() {
    return new StudentBelief(-estimate, standardError, degreesOfFreedom);
  }
}
