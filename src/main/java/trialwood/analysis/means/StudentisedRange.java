package trialwood.analysis.means;

import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Refuse;

/**
 * The studentised range Q of k means: the range of k independent standard normal variables, divided
 * by an independent estimate s of their standard deviation with ν degrees of freedom.
 *
 * <pre>Pr(Q &gt; q) = E[w(q s)],  w(r) = ∫ k φ(z) {(1 − Φ(z))ᵏ⁻¹ − (Φ(z + r) − Φ(z))ᵏ⁻¹} dz</pre>
 *
 * z being the least of the k. Both integrals are trapezoid sums with about 12 digits, also for few,
 * fractional or infinite degrees of freedom; chances down to 1e-12 keep six of them.
 *
 * <p>Source: Tukey, J. W. (1953) The problem of multiple comparisons; Pearson, E. S. and Hartley,
 * H. O. (1942) The probability integral of the range. Biometrika 32, 301–310
 */
public final class StudentisedRange {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final Quadrature LEAST = Quadrature.standardNormal(0.125);

  private final int means;
  private final Quadrature scale;

  private StudentisedRange(int means, Quadrature scale) {
    this.means = means;
    this.scale = scale;
  }

  /**
   * @param means k, at least 2
   * @param df ν, 0.1 or more; may be infinite
   * @throws IllegalArgumentException if either is less
   */
  public static StudentisedRange of(int means, double df) {
    Refuse.unless(means >= 2, "A range needs at least two means, not %d.", means);
    return new StudentisedRange(means, Quadrature.errorScale(df, Quadrature.FINE));
  }

  /** Pr(Q ≤ q); 0 for q ≤ 0. */
  public double cumulativeProbability(double q) {
    return 1 - survivalProbability(q);
  }

  /** Pr(Q &gt; q). */
  public double survivalProbability(double q) {
    Refuse.unless(!Double.isNaN(q), "The line to exceed must be a number.");
    return q <= 0 ? 1 : Math.min(1, scale.mean(s -> beyond(q * s)));
  }

  /**
   * The q with Pr(Q ≤ q) = {@code probability}.
   *
   * @throws IllegalArgumentException if the probability is not inside (0, 1)
   */
  public double quantile(double probability) {
    return UpperQuantile.of(this::survivalProbability, 0, probability);
  }

  /** Chance that the range of k standard normal variables exceeds r. */
  private double beyond(double r) {
    return LEAST.mean(
        z -> {
          double above = NORMAL.survivalProbability(z);
          double farAbove = NORMAL.survivalProbability(z + r);
          double allAbove = Math.pow(above, means - 1);
          return -means * allAbove * Math.expm1((means - 1) * Math.log1p(-farAbove / above));
        });
  }
}
