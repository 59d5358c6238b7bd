package trialwood.analysis;

import java.util.Arrays;

/** Variances and covariances of several estimates: a symmetric table that cannot be changed. */
public final class Covariance {

  private final double[][] values;

  private Covariance(double[][] values) {
    this.values = values;
  }

  /** A copy of a square table. */
  public static Covariance of(double[][] values) {
    for (double[] row : values) {
      Refuse.unless(row.length == values.length, "A covariance table is square.");
    }
    return new Covariance(Arrays.stream(values).map(double[]::clone).toArray(double[][]::new));
  }

  /** How many estimates. */
  public int size() {
    return values.length;
  }

  /** Covariance of two estimates; the variance of one where i = j. */
  public double between(int i, int j) {
    return values[i][j];
  }

  /** Standard error of one estimate. */
  public double error(int i) {
    return Math.sqrt(values[i][i]);
  }

  /** Standard error of Σ weightᵢ × estimateᵢ. */
  public double errorOf(double... weights) {
    Refuse.unless(weights.length == size(), "Each estimate needs its weight.");
    double variance = 0;
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < weights.length; j++) {
        variance += weights[i] * values[i][j] * weights[j];
      }
    }
    return Math.sqrt(variance);
  }
}
