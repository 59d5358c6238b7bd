package trialwood.analysis.means;

import java.util.function.DoubleUnaryOperator;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/** The quantile of a positive variable from the chance of exceeding a line. */
final class UpperQuantile {

  private UpperQuantile() {}

  /**
   * The line that is exceeded with chance 1 − {@code probability}: doubles an upper end from 1
   * until it lies beyond, then solves in between.
   *
   * @param beyond chance of exceeding a line; falls from less than 1 at 0 to 0
   * @param low a line below the quantile
   */
  static double of(DoubleUnaryOperator beyond, double low, double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    double high = 1;
    while (1 - beyond.applyAsDouble(high) < probability && high < Double.MAX_VALUE / 2) {
      high *= 2;
    }
    return Quantile.solve(line -> 1 - beyond.applyAsDouble(line), low, high, probability);
  }
}
