package trialwood.analysis.means;

import java.util.Arrays;
import java.util.Optional;
import trialwood.analysis.Refuse;

/**
 * The greatest of k correlated t values with a common error of ν degrees of freedom: the
 * distribution behind comparisons of k entries with one check.
 *
 * <p>Where every correlation is a product ρᵢⱼ = λᵢλⱼ, as with plain replicates, where λᵢ = √(nᵢ /
 * (nᵢ + n₀)), two nested trapezoid sums give about 10 digits. Any other correlation, as with
 * incomplete blocks, is summed over a fixed lattice and good to about 2e-4.
 *
 * <p>Source: Dunnett, C. W. (1955) A multiple comparison procedure for comparing several treatments
 * with a control. Journal of the American Statistical Association 50, 1096–1121
 */
public final class DunnettDistribution {

  private final NormalMaximum maximum;
  private final Quadrature scale;

  private DunnettDistribution(NormalMaximum maximum, Quadrature scale) {
    this.maximum = maximum;
    this.scale = scale;
  }

  /**
   * For any correlation between the k differences.
   *
   * @param correlation k × k, symmetric, ones on the diagonal, positive definite
   * @param df ν, 0.1 or more; may be infinite
   * @throws IllegalArgumentException if the matrix is no correlation of differing variables
   */
  public static DunnettDistribution of(double[][] correlation, double df) {
    Refuse.unless(correlation.length > 0, "There is nothing to compare with the check.");
    for (int i = 0; i < correlation.length; i++) {
      Refuse.unless(correlation[i].length == correlation.length, "Correlations form a square.");
      for (int j = 0; j <= i; j++) {
        double r = correlation[i][j];
        boolean possible = i == j ? Math.abs(r - 1) < 1e-9 : Math.abs(r) < 1;
        Refuse.unless(
            possible && Math.abs(r - correlation[j][i]) < 1e-9,
            "%s is no correlation of two differences.",
            r);
      }
    }
    Optional<ProductCorrelation> product = ProductCorrelation.of(correlation);
    return product.isPresent()
        ? of(product.get(), df)
        : new DunnettDistribution(
            GeneralCorrelation.of(correlation), Quadrature.errorScale(df, Quadrature.COARSE));
  }

  /** For k differences of equal variance, each pair with correlation ρ; ½ for equal replicates. */
  public static DunnettDistribution ofEqual(int comparisons, double rho, double df) {
    Refuse.unless(comparisons > 0, "There is nothing to compare with the check.");
    double[][] correlation = new double[comparisons][comparisons];
    for (int i = 0; i < comparisons; i++) {
      Arrays.fill(correlation[i], rho);
      correlation[i][i] = 1;
    }
    return of(correlation, df);
  }

  /** For plain replicates: plots of the check, and plots of each entry. */
  public static DunnettDistribution ofReplicates(int ofCheck, int[] ofEntries, double df) {
    Refuse.unless(ofCheck > 0, "The check needs at least one plot.");
    Refuse.unless(ofEntries.length > 0, "There is nothing to compare with the check.");
    double[] lambda = new double[ofEntries.length];
    for (int i = 0; i < lambda.length; i++) {
      Refuse.unless(ofEntries[i] > 0, "Every entry needs at least one plot.");
      lambda[i] = Math.sqrt(ofEntries[i] / ((double) ofEntries[i] + ofCheck));
    }
    return of(new ProductCorrelation(lambda), df);
  }

  private static DunnettDistribution of(ProductCorrelation product, double df) {
    return new DunnettDistribution(product, Quadrature.errorScale(df, Quadrature.FINE));
  }

  /** Pr(max |Tᵢ| &gt; d); 1 for d ≤ 0. */
  public double beyondOnEitherSide(double d) {
    Refuse.unless(!Double.isNaN(d), "The line to exceed must be a number.");
    return d <= 0 ? 1 : within(scale.mean(s -> maximum.beyondOnEitherSide(d * s)));
  }

  /** Pr(max Tᵢ &gt; d). */
  public double beyond(double d) {
    Refuse.unless(!Double.isNaN(d), "The line to exceed must be a number.");
    return within(scale.mean(s -> maximum.beyond(d * s)));
  }

  /** The d with Pr(max |Tᵢ| ≤ d) = {@code probability}, which must lie inside (0, 1). */
  public double twoSidedQuantile(double probability) {
    return UpperQuantile.of(this::beyondOnEitherSide, 0, probability);
  }

  /** The d with Pr(max Tᵢ ≤ d) = {@code probability}, which must lie inside (0, 1). */
  public double oneSidedQuantile(double probability) {
    double low = -1;
    while (1 - beyond(low) > probability && low > -Double.MAX_VALUE / 2) {
      low *= 2;
    }
    return UpperQuantile.of(this::beyond, low, probability);
  }

  private static double within(double chance) {
    return Math.min(1, Math.max(0, chance));
  }
}
