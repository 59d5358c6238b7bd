package trialwood.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The highest point of a smooth function such as a log-likelihood, found by Newton's method: the
 * Hessian is made negative definite by a ridge where it is not, no step goes further than {@value
 * #LONGEST} in any direction, and a step that does not climb is halved.
 *
 * <p>Source: Nocedal, J. and Wright, S. J. (2006) Numerical Optimization, 2nd ed. Springer, chapter
 * 3
 *
 * @param at where it lies
 * @param value the function there
 * @param covariance the inverse of the negative Hessian there: of a log-likelihood, the covariance
 *     of the estimates by observed information
 */
public record Maximum(List<Double> at, double value, Covariance covariance) {

  private static final int STEPS = 200;
  private static final double LONGEST = 3;
  private static final double FLAT = 1e-9;

  /** A function's value, gradient and Hessian at one point. */
  public record Surface(double value, double[] gradient, double[][] hessian) {

    /** At 0, to be added to. */
    public static Surface flat(int dimensions) {
      return new Surface(0, new double[dimensions], new double[dimensions][dimensions]);
    }

    public Surface withValue(double newValue) {
      return new Surface(newValue, gradient, hessian);
    }

    private boolean isFinite() {
      return Double.isFinite(value)
          && Arrays.stream(gradient).allMatch(Double::isFinite)
          && Arrays.stream(hessian).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite);
    }
  }

  private record Step(double[] to, double rise, boolean isNewtons) {}

  /** Climbs from {@code start}; lacking if no summit is reached in a bounded number of steps. */
  public static Answer<Maximum> of(Function<double[], Surface> function, double... start) {
    double[] x = start.clone();
    Surface here = function.apply(x);
    int flatSteps = 0;
    for (int i = 0; i < STEPS && here.isFinite(); i++) {
      Step step = stepFrom(x, here);
      boolean isFlat = step.isNewtons && step.rise < FLAT;
      Surface there = function.apply(step.to);
      double[] next = step.to;
      for (int half = 0; half < 50 && !isFlat && !(there.value > here.value); half++) {
        next = middle(x, next);
        there = function.apply(next);
      }
      x = next;
      here = there;
      flatSteps = isFlat ? flatSteps + 1 : 0;
      if (flatSteps == 2) {
        return summit(x, here);
      }
    }
    return Answer.lacking("The fit did not settle.");
  }

  private static Answer<Maximum> summit(double[] x, Surface here) {
    int n = x.length;
    DMatrixRMaj curvature = bent(here, 0);
    double[] unit = new double[n];
    for (int i = 0; i < n; i++) {
      unit[i] = 1 / Math.sqrt(curvature.get(i, i));
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        curvature.set(i, j, unit[i] * curvature.get(i, j) * unit[j]);
      }
    }
    var solver = LinearSolverFactory_DDRM.symmPosDef(n);
    if (!here.isFinite() || !solver.setA(curvature) || !(solver.quality() > 1e-12)) {
      return Answer.lacking("The fit did not settle.");
    }
    var inverse = new DMatrixRMaj(n, n);
    solver.invert(inverse);
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance[i][j] = unit[i] * inverse.get(i, j) * unit[j];
      }
    }
    return Answer.known(
        new Maximum(Arrays.stream(x).boxed().toList(), here.value, Covariance.of(covariance)));
  }

  private static Step stepFrom(double[] x, Surface here) {
    int n = x.length;
    var gradient = new DMatrixRMaj(n, 1, true, here.gradient);
    var step = new DMatrixRMaj(n, 1);
    double largest = 1e-12;
    for (int i = 0; i < n; i++) {
      largest = Math.max(largest, Math.abs(here.hessian[i][i]));
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
    double ridge = 0;
    while (!solver.setA(bent(here, ridge))) {
      ridge = ridge == 0 ? 1e-8 * largest : 10 * ridge;
    }
    solver.solve(gradient, step);
    double longest = Arrays.stream(step.data).map(Math::abs).max().orElse(0);
    double scale = longest > LONGEST ? LONGEST / longest : 1;
    double[] to = new double[n];
    double rise = 0;
    for (int i = 0; i < n; i++) {
      to[i] = x[i] + scale * step.get(i);
      rise += here.gradient[i] * step.get(i);
    }
    return new Step(to, rise, ridge == 0 && scale == 1);
  }

  /** The negative Hessian with a ridge on its diagonal. */
  private static DMatrixRMaj bent(Surface here, double ridge) {
    int n = here.gradient.length;
    var bent = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        bent.set(i, j, (i == j ? ridge : 0) - here.hessian[i][j]);
      }
    }
    return bent;
  }

  private static double[] middle(double[] x, double[] y) {
    double[] middle = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      middle[i] = (x[i] + y[i]) / 2;
    }
    return middle;
  }
}
