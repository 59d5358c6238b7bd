package trialwood.analysis;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/** Inverts distribution functions to nearly full double precision. */
final class Quantile {

  private Quantile() {}

  /**
   * The quantile of a library distribution. The library's own search stops at an absolute 1e-9; two
   * Newton steps on the smaller tail bring a small quantile to full relative precision.
   */
  static double of(ContinuousDistribution distribution, double probability) {
    double x = distribution.inverseCumulativeProbability(probability);
    for (int step = 0; step < 2; step++) {
      double density = distribution.density(x);
      if (!(density > 0) || Double.isInfinite(density)) {
        return x;
      }
      double excess =
          probability < 0.5
              ? distribution.cumulativeProbability(x) - probability
              : (1 - probability) - distribution.survivalProbability(x);
      double next = x - excess / density;
      if (next <= distribution.getSupportLowerBound()
          || next >= distribution.getSupportUpperBound()) {
        return x;
      }
      x = next;
    }
    return x;
  }

  /**
   * Solves {@code cdf(x) = probability} on [low, high] for a non-decreasing {@code cdf}, by regula
   * falsi with the Illinois weights and a bisection every third step.
   */
  static double solve(DoubleUnaryOperator cdf, double low, double high, double probability) {
    double a = low;
    double b = high;
    double fa = cdf.applyAsDouble(a) - probability;
    double fb = cdf.applyAsDouble(b) - probability;
    if (fa >= 0) {
      return a;
    }
    if (fb <= 0) {
      return b;
    }
    for (int step = 1; step < 200 && b - a > 1e-13 * (1 + Math.abs(a)); step++) {
      double x = step % 3 == 0 ? (a + b) / 2 : b - fb * (b - a) / (fb - fa);
      double fx = cdf.applyAsDouble(x) - probability;
      if (fx == 0) {
        return x;
      }
      if (fx < 0) {
        a = x;
        fa = fx;
        fb /= 2;
      } else {
        b = x;
        fb = fx;
        fa /= 2;
      }
    }
    return (a + b) / 2;
  }
}
