package trialwood.analysis.mixed;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Variances by moments, for the search to start from: sums of squared level sums of the values less
 * the fixed effects, set equal to what they would be on average if the fixed effects were known.
 *
 * @param start variances of the owned terms, the crossing terms and the residual, all above 0
 * @param total variance of the values about the fixed effects; 0 if they explain every value
 */
record Moments(double[] start, double total) {

  /** No variance starts below this share of the total. */
  private static final double LEAST = 0.005;

  /** Squares below this share of the values' own are rounding. */
  private static final double ROUNDING = 1e-24;

  static Moments of(double[] values, FixedPart fixed, Layout layout) {
    double[] off = aboutFixed(values, fixed);
    double squares = Products.dot(off, off);
    int free = values.length - fixed.count();
    double total = squares <= ROUNDING * Products.dot(values, values) ? 0 : squares / free;
    List<Factor> terms =
        Stream.concat(layout.owned().stream(), layout.crossing().stream()).toList();
    int count = terms.size();
    var matrix = new DMatrixRMaj(count + 1, count + 1);
    var right = new DMatrixRMaj(count + 1, 1);
    for (int k = 0; k < count; k++) {
      double share =
          1 - Math.min(0.9, (double) shared(terms.get(k), fixed) / terms.get(k).levels().size());
      for (int l = 0; l <= k; l++) {
        double together = together(terms.get(k), terms.get(l)) * share;
        matrix.set(k, l, together);
        matrix.set(l, k, together);
      }
      matrix.set(k, count, free);
      matrix.set(count, k, free);
      right.set(k, 0, squaredSums(terms.get(k), off));
    }
    matrix.set(count, count, free);
    right.set(count, 0, squares);
    var solved = new DMatrixRMaj(count + 1, 1);
    double[] start = new double[count + 1];
    Arrays.fill(start, total / (count + 1));
    if (CommonOps_DDRM.solve(matrix, right, solved)) {
      for (int k = 0; k <= count; k++) {
        double moment = solved.get(k, 0);
        start[k] = Double.isFinite(moment) ? Math.max(moment, LEAST * total) : start[k];
      }
    }
    return new Moments(start, total);
  }

  /** Levels of a term that the fixed effects explain: those of a fixed factor it is nested in. */
  private static int shared(Factor term, FixedPart fixed) {
    return fixed.factors().stream()
        .filter(term::isNestedIn)
        .mapToInt(factor -> factor.levels().size())
        .max()
        .orElse(1);
  }

  /** Values less their fixed effects by least squares. */
  private static double[] aboutFixed(double[] values, FixedPart fixed) {
    int count = fixed.count();
    var cross = new DMatrixRMaj(count, count);
    var right = new DMatrixRMaj(count, 1);
    for (int i = 0; i < values.length; i++) {
      for (int f = 0; f < fixed.columns().length; f++) {
        int a = fixed.column(f, i);
        if (a >= 0) {
          right.add(a, 0, values[i]);
          for (int g = 0; g < fixed.columns().length; g++) {
            int b = fixed.column(g, i);
            if (b >= 0) {
              cross.add(a, b, 1);
            }
          }
        }
      }
    }
    PositiveDefinite.invert(cross);
    double[] effects = Products.times(cross, right.data);
    double[] off = values.clone();
    for (int i = 0; i < off.length; i++) {
      for (int f = 0; f < fixed.columns().length; f++) {
        int column = fixed.column(f, i);
        off[i] -= column < 0 ? 0 : effects[column];
      }
    }
    return off;
  }

  /** Σ over pairs of levels of the squared number of values they have in common. */
  private static double together(Factor one, Factor other) {
    if (one.isNestedIn(other)) {
      return squaredCounts(one.codes(), one.levels().size());
    }
    if (other.isNestedIn(one)) {
      return squaredCounts(other.codes(), other.levels().size());
    }
    Combination pairs = Combination.of(one.codes(), other.codes());
    return squaredCounts(pairs.codes(), pairs.count());
  }

  private static double squaredCounts(int[] codes, int levels) {
    double[] counts = new double[levels];
    for (int code : codes) {
      counts[code]++;
    }
    return Products.dot(counts, counts);
  }

  private static double squaredSums(Factor term, double[] off) {
    double[] sums = new double[term.levels().size()];
    for (int i = 0; i < off.length; i++) {
      sums[term.codes()[i]] += off[i];
    }
    return Products.dot(sums, sums);
  }
}
