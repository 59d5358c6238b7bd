package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.jspecify.annotations.Nullable;

/**
 * Finds the variances that make −2 log REML least, none below 0.
 *
 * <p>Newton steps with the average information; a step that does not lower the criterion is halved.
 * A variance that would fall below 0 is put to 0, and comes back when the criterion falls towards
 * larger ones.
 */
final class RemlSearch {

  private static final int STEPS = 200;
  private static final int HALVINGS = 40;

  /**
   * The search ends with the step that promises to lower the criterion by less than this. Near the
   * end each step leaves less than a thousandth of the promise of the one before.
   */
  private static final double PROMISE = 1e-8;

  private RemlSearch() {}

  /**
   * The end of a search.
   *
   * @param settled whether the last step promised nothing more
   */
  record End(Evaluation at, boolean settled, int steps) {}

  static End from(Layout layout, double[] start) {
    var at = new Evaluation(layout, start);
    var slope = new Slope(at);
    for (int step = 0; step < STEPS; step++) {
      double[] gradient = slope.gradient();
      double[] direction = direction(at.variances(), gradient, slope.averageInformation());
      if (-Products.dot(gradient, direction) < PROMISE) {
        var last = new Evaluation(layout, moved(at.variances(), direction, 1));
        return new End(last, true, step);
      }
      Evaluation next = lower(at, direction);
      if (next == null) {
        return new End(at, false, step);
      }
      at = next;
      slope = new Slope(at);
    }
    return new End(at, false, STEPS);
  }

  /** The Newton direction over the variances that are free to move; 0 for those held at 0. */
  private static double[] direction(
      double[] variances, double[] gradient, DMatrixRMaj information) {
    int terms = variances.length;
    boolean[] free = new boolean[terms];
    for (int k = 0; k < terms; k++) {
      free[k] = variances[k] > 0 || gradient[k] < 0;
    }
    double[] step = newton(free, gradient, information);
    for (int k = 0; k < terms; k++) {
      if (free[k] && variances[k] == 0 && step[k] < 0) {
        free[k] = false;
        step = newton(free, gradient, information);
      }
    }
    return step;
  }

  private static double[] newton(boolean[] free, double[] gradient, DMatrixRMaj information) {
    int terms = free.length;
    var matrix = information.copy();
    var right = new DMatrixRMaj(terms, 1);
    for (int k = 0; k < terms; k++) {
      double own = Math.max(information.get(k, k), Double.MIN_NORMAL);
      if (free[k]) {
        right.set(k, 0, -gradient[k]);
        matrix.set(k, k, own * (1 + 1e-12));
      } else {
        for (int l = 0; l < terms; l++) {
          matrix.set(k, l, 0);
          matrix.set(l, k, 0);
        }
        matrix.set(k, k, own);
      }
    }
    var step = new DMatrixRMaj(terms, 1);
    CommonOps_DDRM.solve(matrix, right, step);
    return step.data;
  }

  /** The first point along the direction, a full step first, that lowers the criterion. */
  private static @Nullable Evaluation lower(Evaluation at, double[] direction) {
    double[] variances = at.variances();
    double length = 1;
    for (int half = 0; half < HALVINGS; half++, length /= 2) {
      var next = new Evaluation(at.layout(), moved(variances, direction, length));
      if (next.criterion() < at.criterion()) {
        return next;
      }
    }
    return null;
  }

  private static double[] moved(double[] variances, double[] direction, double length) {
    double[] moved = new double[variances.length];
    for (int k = 0; k < moved.length; k++) {
      moved[k] = Math.max(0, variances[k] + length * direction[k]);
    }
    int last = moved.length - 1;
    moved[last] = Math.max(moved[last], variances[last] / 10);
    return moved;
  }
}
