package trialwood.analysis.mixed;

import java.util.List;

/**
 * The same model by the formulas of a textbook, every matrix in full:
 *
 * <pre>
 * V = Σ σₖ²ZₖZₖ' + σ²I        P = V⁻¹ − V⁻¹X(X'V⁻¹X)⁻¹X'V⁻¹
 * </pre>
 *
 * <p>Source: Searle, Casella and McCulloch (1992) Variance Components, chapter 6
 */
final class DenseModel {

  private final FullMatrix y;
  private final FullMatrix x;
  private final List<FullMatrix> z;
  private final double[] variances;
  private final FullMatrix covariance;
  private final FullMatrix precision;
  private final FullMatrix fixedErrors;
  private final FullMatrix projection;

  /** With the variances of the random terms in their order, then of the residual. */
  DenseModel(double[] values, FixedPart fixed, List<Factor> random, double[] variances) {
    this.y = FullMatrix.column(values);
    this.x = columns(fixed, values.length);
    this.z = random.stream().map(DenseModel::indicators).toList();
    this.variances = variances.clone();
    FullMatrix sum = FullMatrix.zero(values.length, values.length);
    for (int k = 0; k <= z.size(); k++) {
      sum = sum.plus(likeness(k).times(variances[k]));
    }
    this.covariance = sum;
    this.precision = covariance.inverse();
    FullMatrix weighted = precision.times(x);
    this.fixedErrors = x.transposed().times(weighted).inverse();
    this.projection = precision.minus(weighted.times(fixedErrors).times(weighted.transposed()));
  }

  double criterion() {
    return covariance.logDeterminant()
        - fixedErrors.logDeterminant()
        + square(y, projection).get(0, 0)
        + (y.rows() - x.columns()) * Math.log(2 * Math.PI);
  }

  /** tr(PVₖ) − y'PVₖPy. */
  double derivative(int term) {
    return projection.times(likeness(term)).trace()
        - square(projection.times(y), likeness(term)).get(0, 0);
  }

  /** y'PVₖPVₗPy. */
  double averageInformation(int one, int other) {
    FullMatrix left = likeness(one).times(projection).times(y);
    FullMatrix right = likeness(other).times(projection).times(y);
    return left.transposed().times(projection).times(right).get(0, 0);
  }

  /** ½ tr(PVₖPVₗ). */
  double expectedInformation(int one, int other) {
    return projection.times(likeness(one)).times(projection).times(likeness(other)).trace() / 2;
  }

  /** (X'V⁻¹X)⁻¹. */
  FullMatrix fixedErrors() {
    return fixedErrors;
  }

  FullMatrix fixedEffects() {
    return fixedErrors.times(x.transposed()).times(precision).times(y);
  }

  /** σₖ²Zₖ'Py. */
  FullMatrix effects(int term) {
    return z.get(term).transposed().times(projection).times(y).times(variances[term]);
  }

  /** σₖ²I − σₖ⁴Zₖ'PZₖ. */
  FullMatrix effectErrors(int term) {
    return errors(term, projection);
  }

  /** σₖ²I − σₖ⁴Zₖ'V⁻¹Zₖ, the fixed effects being known. */
  FullMatrix conditionalErrors(int term) {
    return errors(term, precision);
  }

  private FullMatrix errors(int term, FullMatrix weights) {
    double variance = variances[term];
    return FullMatrix.identity(z.get(term).columns())
        .times(variance)
        .minus(square(z.get(term), weights).times(variance * variance));
  }

  /** ZₖZₖ'; the identity for the residual. */
  private FullMatrix likeness(int term) {
    return term == z.size()
        ? FullMatrix.identity(y.rows())
        : z.get(term).times(z.get(term).transposed());
  }

  private static FullMatrix square(FullMatrix outer, FullMatrix inner) {
    return outer.transposed().times(inner).times(outer);
  }

  private static FullMatrix columns(FixedPart fixed, int values) {
    FullMatrix matrix = FullMatrix.zero(values, fixed.count());
    for (int i = 0; i < values; i++) {
      for (int f = 0; f < fixed.columns().length; f++) {
        int column = fixed.column(f, i);
        if (column >= 0) {
          matrix.set(i, column, 1);
        }
      }
    }
    return matrix;
  }

  private static FullMatrix indicators(Factor factor) {
    FullMatrix matrix = FullMatrix.zero(factor.size(), factor.levels().size());
    for (int i = 0; i < factor.size(); i++) {
      matrix.set(i, factor.codes()[i], 1);
    }
    return matrix;
  }
}
