package trialwood.analysis.mixed;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.Refuse;

/**
 * Means of the levels of a fixed factor, with the covariance of their errors.
 *
 * @param levels in alphabetical order
 * @param means in units of the values
 * @param covariance level by level
 */
public record AdjustedMeans(List<String> levels, double[] means, DMatrixRMaj covariance) {

  public double mean(String level) {
    return means[index(level)];
  }

  public double se(String level) {
    int i = index(level);
    return Math.sqrt(covariance.get(i, i));
  }

  /** Standard error of the difference of two means. */
  public double sed(String one, String other) {
    return Math.sqrt(differenceVariance(index(one), index(other)));
  }

  /**
   * Mean over all pairs of the variance of their difference.
   *
   * @throws IllegalArgumentException if there is one mean only
   */
  public double meanDifferenceVariance() {
    return overPairs(false);
  }

  /**
   * Mean over all pairs of the standard error of their difference.
   *
   * @throws IllegalArgumentException if there is one mean only
   */
  public double meanSed() {
    return overPairs(true);
  }

  private double overPairs(boolean root) {
    Refuse.unless(means.length > 1, "One mean alone has no difference.");
    double sum = 0;
    int pairs = 0;
    for (int i = 0; i < means.length; i++) {
      for (int j = 0; j < i; j++) {
        double variance = differenceVariance(i, j);
        sum += root ? Math.sqrt(variance) : variance;
        pairs++;
      }
    }
    return sum / pairs;
  }

  private double differenceVariance(int i, int j) {
    return covariance.get(i, i) + covariance.get(j, j) - 2 * covariance.get(i, j);
  }

  private int index(String level) {
    int index = levels.indexOf(level);
    if (index < 0) {
      throw new IllegalArgumentException("There is no mean of %s.".formatted(level));
    }
    return index;
  }
}
