package trialwood.analysis;

/**
 * The least-squares line y = a + bx through points,
 *
 * <pre>b = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)²,  a = ȳ − b x̄,  s² = residual squares/(n − 2),
 * se(b) = s/√Σ(x − x̄)²,  R² = 1 − residual squares/Σ(y − ȳ)²</pre>
 *
 * Residual squares that are no more than rounding count as 0.
 *
 * <p>Source: Draper, N. R. and Smith, H. (1998) Applied Regression Analysis, 3rd ed., Wiley,
 * chapter 1
 *
 * @param points n, at least 2
 * @param intercept a, in the unit of y
 * @param slope b, in the unit of y per unit of x
 * @param spread Σ(x − x̄)², above 0
 * @param totalSquares Σ(y − ȳ)²
 * @param residualSquares Σ(y − a − bx)²
 */
public record StraightLine(
    int points,
    double intercept,
    double slope,
    double spread,
    double totalSquares,
    double residualSquares) {

  private static final double ROUNDING = 1e-26;

  /**
   * Lacking with fewer than two points, or where all points share one x.
   *
   * @param x where
   * @param y what was seen there; as many as {@code x}
   * @throws IllegalArgumentException if the lengths differ or a number is not finite
   */
  public static Answer<StraightLine> through(double[] x, double[] y) {
    Refuse.unless(x.length == y.length, "%d places but %d values.", x.length, y.length);
    for (int i = 0; i < x.length; i++) {
      Refuse.unlessFinite(x[i], "place of a point");
      Refuse.unlessFinite(y[i], "value of a point");
    }
    if (x.length < 2) {
      return Answer.lacking("A line needs at least two points.");
    }
    double meanX = mean(x);
    double meanY = mean(y);
    double spread = 0;
    double product = 0;
    double total = 0;
    double size = 0;
    for (int i = 0; i < x.length; i++) {
      spread += (x[i] - meanX) * (x[i] - meanX);
      product += (x[i] - meanX) * (y[i] - meanY);
      total += (y[i] - meanY) * (y[i] - meanY);
      size += y[i] * y[i];
    }
    if (!(spread > 0)) {
      return Answer.lacking("All points stand at one place: no slope can be seen.");
    }
    double slope = product / spread;
    double residual = 0;
    for (int i = 0; i < x.length; i++) {
      double off = y[i] - meanY - slope * (x[i] - meanX);
      residual += off * off;
    }
    return Answer.known(
        new StraightLine(
            x.length,
            meanY - slope * meanX,
            slope,
            spread,
            total <= ROUNDING * size ? 0 : total,
            residual <= ROUNDING * size ? 0 : residual));
  }

  /** The height of the line at {@code x}. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /** n − 2. */
  public int degreesOfFreedom() {
    return points - 2;
  }

  /** s²; lacking with two points, which no line can miss. */
  public Answer<Double> residualVariance() {
    return points > 2
        ? Answer.known(residualSquares / degreesOfFreedom())
        : Answer.lacking("Two points leave nothing to judge the error of a line.");
  }

  /** s; lacking with two points. */
  public Answer<Double> residualSd() {
    return residualVariance().map(Math::sqrt);
  }

  /** se(b); lacking with two points. */
  public Answer<Double> slopeError() {
    return residualVariance().map(variance -> Math.sqrt(variance / spread));
  }

  /** The share of the variation of y that goes with x; lacking where y never changes. */
  public Answer<Double> rSquared() {
    return totalSquares > 0
        ? Answer.known(1 - residualSquares / totalSquares)
        : Answer.lacking("The values never change.");
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
