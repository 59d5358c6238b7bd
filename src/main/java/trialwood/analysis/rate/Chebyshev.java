package trialwood.analysis.rate;

/**
 * A smooth function on [low, high] as a Chebyshev series through its values at the Chebyshev points
 * of the first kind, and its running integral.
 *
 * <p>Source: Clenshaw, C. W. and Curtis, A. R. (1960) A method for numerical integration on an
 * automatic computer. Numerische Mathematik 2, 197–205; points of Fejér (1933).
 */
final class Chebyshev {

  private final double low;
  private final double high;
  private final double[] coefficients;
  private final double[] integral;

  /**
   * @param values at {@link #points(double, double, int)}, in that order
   */
  Chebyshev(double low, double high, double[] values) {
    this.low = low;
    this.high = high;
    this.coefficients = seriesThrough(values);
    this.integral = integrated(coefficients, (high - low) / 2);
  }

  /** The n points, all inside (low, high), from high to low. */
  static double[] points(double low, double high, int n) {
    double[] points = new double[n];
    for (int i = 0; i < n; i++) {
      points[i] = (low + high) / 2 + (high - low) / 2 * Math.cos(Math.PI * (i + 0.5) / n);
    }
    return points;
  }

  /**
   * Weights at the n points that average a function over its interval (Fejér's first rule); times
   * the length of the interval they integrate.
   */
  static double[] weights(int n) {
    double[] weights = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = 1;
      for (int k = 1; k <= (n - 1) / 2; k++) {
        sum -= 2 * Math.cos(2 * k * Math.PI * (i + 0.5) / n) / (4.0 * k * k - 1);
      }
      weights[i] = sum / n;
    }
    return weights;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /** The function at x in [low, high]. */
  double at(double x) {
    return clenshaw(coefficients, x);
  }

  /** Integral from low to x; x is moved into [low, high] first. */
  double integralTo(double x) {
    return clenshaw(integral, Math.min(high, Math.max(low, x)));
  }

  private double clenshaw(double[] series, double x) {
    double twice = 2 * (2 * x - low - high) / (high - low);
    double next = 0;
    double afterNext = 0;
    for (int k = series.length - 1; k > 0; k--) {
      double current = series[k] + twice * next - afterNext;
      afterNext = next;
      next = current;
    }
    return series[0] + twice / 2 * next - afterNext;
  }

  private static double[] seriesThrough(double[] values) {
    int n = values.length;
    double[] cosines = new double[4 * n];
    for (int i = 0; i < 4 * n; i++) {
      cosines[i] = Math.cos(Math.PI * i / (2 * n));
    }
    double[] series = new double[n];
    for (int k = 0; k < n; k++) {
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += values[i] * cosines[k * (2 * i + 1) % (4 * n)];
      }
      series[k] = (k == 0 ? 1.0 : 2.0) / n * sum;
    }
    return series;
  }

  private static double[] integrated(double[] series, double halfWidth) {
    int n = series.length;
    double[] integral = new double[n + 1];
    for (int k = 1; k <= n; k++) {
      double before = series[k - 1] * (k == 1 ? 2 : 1);
      double after = k + 1 < n ? series[k + 1] : 0;
      integral[k] = halfWidth * (before - after) / (2 * k);
    }
    double atLow = 0;
    for (int k = 1; k <= n; k++) {
      atLow += k % 2 == 0 ? integral[k] : -integral[k];
    }
    integral[0] = -atLow;
    return integral;
  }
}
