package trialwood.analysis.means;

import java.util.function.DoubleUnaryOperator;
import trialwood.analysis.Refuse;

/**
 * The mean of a smooth function over a distribution, as a weighted sum at fixed points. The points
 * are equally spaced in a variable in which the density falls off steeply at both ends; there the
 * plain trapezoid sum gains digits exponentially with the number of points.
 *
 * <p>Source: Trefethen, L. N. and Weideman, J. A. C. (2014) The exponentially convergent
 * trapezoidal rule. SIAM Review 56, 385–458
 *
 * @param points where the function is asked
 * @param weights of the points, together 1
 */
record Quadrature(double[] points, double[] weights) {

  /** Densities below e⁻³⁸ of their peak add nothing to a double. */
  private static final double NOTHING = -38;

  /** Exact to 12 digits. */
  static final double FINE = 0.5;

  /** Exact to 5 digits. */
  static final double COARSE = 1.2;

  private static final double SMALLEST_DF = 0.1;

  /**
   * Over a standard normal variable.
   *
   * @param step between points; an eighth is exact to all digits for functions that turn no faster
   *     than the normal distribution function itself
   */
  static Quadrature standardNormal(double step) {
    int half = (int) Math.ceil(Math.sqrt(-2 * NOTHING) / step);
    double[] points = new double[2 * half + 1];
    double[] weights = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      points[i] = (i - half) * step;
      weights[i] = Math.exp(-points[i] * points[i] / 2);
    }
    return normalised(points, weights);
  }

  /**
   * Over s/σ, where ν s²/σ² is χ² with ν degrees of freedom, fractional or infinite: points in u =
   * log(s/σ), whose density goes with exp(ν(u − (e²ᵘ − 1)/2)).
   *
   * @param spacing of the points in standard deviations of u; {@link #FINE} or {@link #COARSE}
   * @throws IllegalArgumentException for fewer than 0.1 degrees of freedom
   */
  static Quadrature errorScale(double df, double spacing) {
    Refuse.unless(
        df >= SMALLEST_DF, "Degrees of freedom must be %s or more, not %s.", SMALLEST_DF, df);
    if (Double.isInfinite(df)) {
      return new Quadrature(new double[] {1}, new double[] {1});
    }
    double step = spacing * Math.min(0.2, 1 / Math.sqrt(2 * df));
    int below = steps(-step, df);
    int above = steps(step, df);
    double[] points = new double[below + above + 1];
    double[] weights = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      double u = (i - below) * step;
      points[i] = Math.exp(u);
      weights[i] = Math.exp(logDensity(u, df));
    }
    return normalised(points, weights);
  }

  double mean(DoubleUnaryOperator function) {
    double mean = 0;
    for (int i = 0; i < points.length; i++) {
      mean += weights[i] * function.applyAsDouble(points[i]);
    }
    return mean;
  }

  private static int steps(double step, double df) {
    int steps = 0;
    while (logDensity(steps * step, df) > NOTHING) {
      steps++;
    }
    return steps;
  }

  private static double logDensity(double u, double df) {
    return df * (u - Math.expm1(2 * u) / 2);
  }

  private static Quadrature normalised(double[] points, double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return new Quadrature(points, weights);
  }
}
