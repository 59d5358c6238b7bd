package trialwood.analysis.means;

import java.util.Arrays;

/**
 * Weighted least squares of plot values on columns. The mean of the values is taken off first and
 * every projection is done twice, so that values with many leading digits in common lose none of
 * the others.
 *
 * @param basis the columns made orthogonal
 * @param centre what was taken off, in the unit of the trait
 * @param effects part of the values along each direction of the basis
 * @param residuals what is left, times the root of the weight
 */
record LeastSquares(OrthogonalColumns basis, double centre, double[] effects, double[] residuals) {

  /**
   * @param columns one array a column, the first of them ones
   */
  static LeastSquares of(double[][] columns, double[] values, double[] weights) {
    double centre = mean(values, weights, 0);
    centre += mean(values, weights, centre);
    double[] left = new double[values.length];
    double[] roots = Arrays.stream(weights).map(Math::sqrt).toArray();
    for (int i = 0; i < left.length; i++) {
      left[i] = roots[i] * (values[i] - centre);
    }
    double[][] weighted = new double[columns.length][];
    for (int column = 0; column < columns.length; column++) {
      weighted[column] = columns[column].clone();
      for (int i = 0; i < left.length; i++) {
        weighted[column][i] *= roots[i];
      }
    }
    OrthogonalColumns basis = OrthogonalColumns.of(weighted);
    double[] effects = new double[basis.rank()];
    for (int pass = 0; pass < 2; pass++) {
      for (int k = 0; k < effects.length; k++) {
        effects[k] += OrthogonalColumns.clear(left, basis.directions()[k]);
      }
    }
    return new LeastSquares(basis, centre, effects, left);
  }

  int residualDf() {
    return residuals.length - basis.rank();
  }

  double residualSs() {
    return OrthogonalColumns.dot(residuals, residuals);
  }

  /** Degrees of freedom of the columns from {@code first} up to {@code end}, that excluded. */
  int df(int first, int end) {
    return (int) Arrays.stream(basis.kept()).filter(c -> first <= c && c < end).count();
  }

  /** Sum of squares of these columns after all before them. */
  double ss(int first, int end) {
    double ss = 0;
    for (int k = 0; k < effects.length; k++) {
      if (first <= basis.kept()[k] && basis.kept()[k] < end) {
        ss += effects[k] * effects[k];
      }
    }
    return ss;
  }

  /**
   * A sum of coefficients.
   *
   * @param weights one a column
   */
  LinearFunction function(double[] weights) {
    double[] kept = Arrays.stream(basis.kept()).mapToDouble(c -> weights[c]).toArray();
    double[] spread = basis.solve(kept);
    double[] gap = new double[basis.aliased().length];
    for (int i = 0; i < gap.length; i++) {
      gap[i] = weights[basis.aliased()[i]] - OrthogonalColumns.dot(kept, basis.aliasing()[i]);
    }
    double value = weights[0] * centre + OrthogonalColumns.dot(spread, effects);
    return new LinearFunction(value, spread, gap);
  }

  private static double mean(double[] values, double[] weights, double from) {
    double sum = 0;
    double total = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * (values[i] - from);
      total += weights[i];
    }
    return sum / total;
  }
}
