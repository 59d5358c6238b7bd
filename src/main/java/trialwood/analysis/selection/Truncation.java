package trialwood.analysis.selection;

import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * Selecting the best share p of very many plants whose values are normal: all beyond the truncation
 * point x are kept, their mean lies i standard deviations above that of all,
 *
 * <pre>x = Φ⁻¹(1 − p),  i = φ(x)/p,  k = i(i − x)</pre>
 *
 * and the variance among them is (1 − k) of what it was.
 *
 * <p>Source: Falconer, D. S. and Mackay, T. F. C. (1996) Introduction to Quantitative Genetics, 4th
 * ed., Longman, chapter 11
 *
 * @param share p, inside (0, 1)
 * @param point x, in standard deviations from the mean
 * @param intensity i, in standard deviations
 * @param varianceLost k, 0 to 1
 */
public record Truncation(double share, double point, double intensity, double varianceLost) {

  /**
   * @throws IllegalArgumentException if the share is not inside (0, 1)
   */
  public static Truncation keeping(double share) {
    Refuse.unlessInside(share, "share kept");
    var normal = NormalDistribution.of(0, 1);
    double point = -Quantile.of(normal, share);
    double intensity = normal.density(point) / share;
    return new Truncation(share, point, intensity, intensity * (intensity - point));
  }
}
