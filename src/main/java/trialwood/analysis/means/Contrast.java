package trialwood.analysis.means;

import java.math.BigInteger;
import java.util.Arrays;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;

/**
 * A weighted sum of means whose weights add up to 0.
 *
 * @param estimate with its standard error, in the unit of the trait
 * @param t estimate over standard error
 * @param p chance of a t as far from 0 on either side if the true contrast is 0
 * @param ss its sum of squares with one degree of freedom, in the squared unit of the trait
 */
public record Contrast(StudentBelief estimate, double t, double p, double ss) {

  static Contrast of(StudentBelief estimate, double squaredLength) {
    return new Contrast(
        estimate,
        StudentTest.t(estimate),
        StudentTest.p(estimate),
        estimate.estimate() * estimate.estimate() / squaredLength);
  }

  /**
   * Coefficients that single out the straight line (degree 1), the bend (2) and so on over equally
   * spaced levels, as the smallest whole numbers: −3, −1, 1, 3 for the line over four doses.
   *
   * <p>Source: Fisher, R. A. and Yates, F. (1938) Statistical Tables for Biological, Agricultural
   * and Medical Research, table of orthogonal polynomials; computed after Chebyshev's formula tₙ(x)
   * ∝ Δⁿ C(x, n) C(x − k, n)
   *
   * @param levels k, at least 2
   * @param degree from 1 to k − 1
   * @throws IllegalArgumentException if there is no such polynomial
   */
  public static double[] polynomial(int levels, int degree) {
    Refuse.unless(
        levels >= 2 && degree >= 1 && degree < levels,
        "%d levels have no polynomial of degree %d.",
        levels,
        degree);
    BigInteger[] values = new BigInteger[levels];
    BigInteger divisor = BigInteger.ZERO;
    for (int x = 0; x < levels; x++) {
      values[x] = BigInteger.ZERO;
      for (int m = 0; m <= degree; m++) {
        BigInteger part =
            choose(degree, m)
                .multiply(choose(x + m, degree))
                .multiply(choose(x + m - levels, degree));
        values[x] = (degree - m) % 2 == 0 ? values[x].add(part) : values[x].subtract(part);
      }
      divisor = divisor.gcd(values[x]);
    }
    BigInteger common = divisor;
    return Arrays.stream(values).mapToDouble(v -> v.divide(common).doubleValue()).toArray();
  }

  /** n (n − 1) … (n − k + 1) / k!, for negative n too. */
  private static BigInteger choose(int n, int k) {
    BigInteger product = BigInteger.ONE;
    for (int i = 0; i < k; i++) {
      product = product.multiply(BigInteger.valueOf(n - i)).divide(BigInteger.valueOf(i + 1));
    }
    return product;
  }
}
