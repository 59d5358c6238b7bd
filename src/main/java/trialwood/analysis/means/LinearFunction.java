package trialwood.analysis.means;

import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;

/**
 * A weighted sum of a model's coefficients, such as a mean or a difference of two means; sums of
 * such sums are of the same kind.
 *
 * @param value estimate, in the unit of the trait
 * @param spread its squared length times the residual variance is the variance of the estimate
 * @param gap what stands between it and the layout, 0 throughout where it can be estimated
 */
record LinearFunction(double value, double[] spread, double[] gap) {

  private static final double NOTHING = 1e-7;

  /** This plus {@code times} the other. */
  LinearFunction plus(double times, LinearFunction other) {
    return new LinearFunction(
        value + times * other.value, sum(spread, times, other.spread), sum(gap, times, other.gap));
  }

  LinearFunction times(double factor) {
    return new LinearFunction(
        factor * value, sum(spread, factor - 1, spread), sum(gap, factor - 1, gap));
  }

  LinearFunction minus(LinearFunction other) {
    return plus(-1, other);
  }

  /** Whether the layout holds it. */
  boolean isEstimable() {
    for (double part : gap) {
      if (Math.abs(part) > NOTHING) {
        return false;
      }
    }
    return true;
  }

  double squaredLength() {
    return OrthogonalColumns.dot(spread, spread);
  }

  Answer<StudentBelief> belief(String what, double residualSd, int df) {
    return isEstimable()
        ? Answer.known(new StudentBelief(value, residualSd * Math.sqrt(squaredLength()), df))
        : Answer.lacking(
            "%s cannot be estimated: some combinations have no value.".formatted(what));
  }

  private static double[] sum(double[] a, double times, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += times * b[i];
    }
    return sum;
  }
}
