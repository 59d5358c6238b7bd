package trialwood.analysis.means;

import java.math.BigInteger;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import trialwood.analysis.Refuse;

/**
 * k standard normal variables with any correlation. The chance that all stay inside their limits is
 * turned into an integral over the unit cube, one variable after the other given those before it,
 * and averaged over a fixed lattice of points (multiples of square roots of primes, folded): the
 * same question always gets the same answer. The lattice only gives what the chance differs by from
 * that at the nearest correlations of product form, which is known exactly; blocks with a few plots
 * missing are close to it, so about four digits hold.
 *
 * <p>Source: Genz, A. (1992) Numerical computation of multivariate normal probabilities. Journal of
 * Computational and Graphical Statistics 1, 141–149
 */
final class GeneralCorrelation implements NormalMaximum {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int POINTS = 509;

  private final double[][] root;
  private final ProductCorrelation near;
  private final double[][] rootOfNear;
  private final double[][] lattice;

  private GeneralCorrelation(double[][] correlation, ProductCorrelation near) {
    this.root = root(correlation);
    this.near = near;
    this.rootOfNear = root(near.correlation());
    this.lattice = lattice(correlation.length - 1);
  }

  /**
   * @throws IllegalArgumentException if the matrix is not positive definite
   */
  static GeneralCorrelation of(double[][] correlation) {
    return new GeneralCorrelation(correlation, ProductCorrelation.nearest(correlation));
  }

  /** Lower triangle of the Cholesky decomposition. */
  private static double[][] root(double[][] correlation) {
    int k = correlation.length;
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(k, true);
    Refuse.unless(
        cholesky.decompose(new DMatrixRMaj(correlation)),
        "The correlations contradict each other.");
    DMatrixRMaj lower = cholesky.getT(null);
    double[][] root = new double[k][k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j <= i; j++) {
        root[i][j] = lower.get(i, j);
      }
    }
    return root;
  }

  private static double[][] lattice(int dimensions) {
    double[][] points = new double[POINTS][dimensions];
    BigInteger prime = BigInteger.ONE;
    for (int j = 0; j < dimensions; j++) {
      prime = prime.nextProbablePrime();
      double generator = Math.sqrt(prime.doubleValue());
      for (int i = 0; i < POINTS; i++) {
        double share = (i + 0.5) * generator % 1;
        points[i][j] = Math.abs(2 * share - 1);
      }
    }
    return points;
  }

  @Override
  public double beyond(double d) {
    return near.beyond(d) + beside(Double.NEGATIVE_INFINITY, d);
  }

  @Override
  public double beyondOnEitherSide(double d) {
    return near.beyondOnEitherSide(d) + beside(-d, d);
  }

  /** What the chance of leaving the limits differs by from that at the near correlations. */
  private double beside(double low, double high) {
    return inside(rootOfNear, low, high) - inside(root, low, high);
  }

  private double inside(double[][] lower, double low, double high) {
    double sum = 0;
    double[] given = new double[lower.length];
    for (double[] point : lattice) {
      double product = 1;
      for (int i = 0; i < lower.length && product > 0; i++) {
        double shift = 0;
        for (int j = 0; j < i; j++) {
          shift += lower[i][j] * given[j];
        }
        double from = NORMAL.cumulativeProbability((low - shift) / lower[i][i]);
        double to = NORMAL.cumulativeProbability((high - shift) / lower[i][i]);
        product *= to - from;
        if (i < point.length) {
          given[i] = NORMAL.inverseCumulativeProbability(clamped(from + point[i] * (to - from)));
        }
      }
      sum += product;
    }
    return sum / lattice.length;
  }

  private static double clamped(double probability) {
    return Math.min(1 - 1e-16, Math.max(1e-300, probability));
  }
}
