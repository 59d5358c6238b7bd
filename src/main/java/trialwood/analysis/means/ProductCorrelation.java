package trialwood.analysis.means;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * k standard normal variables with correlations ρᵢⱼ = λᵢλⱼ: Xᵢ = λᵢZ + √(1 − λᵢ²) Eᵢ with one
 * common Z, so that given Z they are independent.
 */
final class ProductCorrelation implements NormalMaximum {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private final double[] lambda;
  private final double[] rest;
  private final Quadrature common;

  /**
   * @param lambda each inside (−1, 1)
   */
  ProductCorrelation(double[] lambda) {
    this.lambda = lambda.clone();
    this.rest = Arrays.stream(lambda).map(l -> Math.sqrt((1 - l) * (1 + l))).toArray();
    double steepest = 1;
    for (int i = 0; i < lambda.length; i++) {
      steepest = Math.min(steepest, rest[i] / Math.max(1e-300, Math.abs(lambda[i])));
    }
    // a step in z is drawn out over √(1 − λ²)/λ; half of that per point keeps all digits
    this.common = Quadrature.standardNormal(Math.max(1e-3, Math.min(0.125, steepest / 2)));
  }

  /** The λ of a correlation matrix; empty where it has none. */
  static Optional<ProductCorrelation> of(double[][] correlation) {
    int k = correlation.length;
    double[] lambda = new double[k];
    if (k == 2) {
      lambda[0] = Math.sqrt(Math.abs(correlation[0][1]));
      lambda[1] = Math.copySign(lambda[0], correlation[0][1]);
    } else if (k > 2) {
      double square = correlation[0][1] * correlation[0][2] / correlation[1][2];
      lambda[0] = square > 0 && square < 1 ? Math.sqrt(square) : 0;
      for (int i = 1; i < k; i++) {
        lambda[i] = lambda[0] == 0 ? 0 : correlation[0][i] / lambda[0];
      }
    }
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < i; j++) {
        if (Math.abs(correlation[i][j] - lambda[i] * lambda[j]) > 1e-10) {
          return Optional.empty();
        }
      }
    }
    boolean possible = Arrays.stream(lambda).allMatch(l -> Math.abs(l) < 1);
    return possible ? Optional.of(new ProductCorrelation(lambda)) : Optional.empty();
  }

  /**
   * The product correlation nearest to a matrix, by least squares: each λ in turn fitted to the
   * others.
   */
  static ProductCorrelation nearest(double[][] correlation) {
    int k = correlation.length;
    double[] lambda = new double[k];
    Arrays.fill(lambda, 0.5);
    for (int round = 0; round < 50; round++) {
      for (int i = 0; i < k; i++) {
        double product = 0;
        double squares = 0;
        for (int j = 0; j < k; j++) {
          if (j != i) {
            product += correlation[i][j] * lambda[j];
            squares += lambda[j] * lambda[j];
          }
        }
        lambda[i] = squares > 0 ? Math.max(-0.99, Math.min(0.99, product / squares)) : 0;
      }
    }
    return new ProductCorrelation(lambda);
  }

  double[][] correlation() {
    double[][] correlation = new double[lambda.length][lambda.length];
    for (int i = 0; i < lambda.length; i++) {
      for (int j = 0; j < lambda.length; j++) {
        correlation[i][j] = i == j ? 1 : lambda[i] * lambda[j];
      }
    }
    return correlation;
  }

  @Override
  public double beyond(double d) {
    return common.mean(
        z -> {
          double logInside = 0;
          for (int i = 0; i < lambda.length; i++) {
            logInside += Math.log1p(-NORMAL.cumulativeProbability((lambda[i] * z - d) / rest[i]));
          }
          return -Math.expm1(logInside);
        });
  }

  @Override
  public double beyondOnEitherSide(double d) {
    return common.mean(
        z -> {
          double logInside = 0;
          for (int i = 0; i < lambda.length; i++) {
            double above = NORMAL.cumulativeProbability((lambda[i] * z - d) / rest[i]);
            double below = NORMAL.cumulativeProbability((-lambda[i] * z - d) / rest[i]);
            logInside += Math.log1p(-Math.min(1, above + below));
          }
          return -Math.expm1(logInside);
        });
  }
}
