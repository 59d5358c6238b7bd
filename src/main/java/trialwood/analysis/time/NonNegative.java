package trialwood.analysis.time;

import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;

/**
 * The q ≥ 0 that minimises ½ q′Hq − b′q, by active sets: solve for the free places, step back to
 * the first that would fall below 0 and hold it there, free the one that pulls hardest, and again.
 *
 * <p>Source: Lawson, C. L. and Hanson, R. J. (1974) Solving Least Squares Problems. Prentice-Hall,
 * chapter 23
 *
 * @param normal H, symmetric, not below 0
 * @param right b
 */
record NonNegative(DMatrixRMaj normal, double[] right) {

  /** A pull weaker than this is none. */
  private static final double NO_PULL = 1e-13;

  /** The minimum, starting with those places free that have weight in {@code start}. */
  double[] from(double[] start) {
    int places = start.length;
    double[] q = start.clone();
    boolean[] free = new boolean[places];
    for (int j = 0; j < places; j++) {
      free[j] = q[j] > 0;
    }
    for (int round = 0; round < 3 * places + 3; round++) {
      for (int step = 0; step <= places && !isSolved(q, free); step++) {
        // each step either solves for the free places or holds one more of them at 0
      }
      int hardest = hardestPull(q, free);
      if (hardest < 0) {
        break;
      }
      free[hardest] = true;
    }
    return q;
  }

  /** Moves q to the solution for the free places, or as far as the first that falls to 0. */
  private boolean isSolved(double[] q, boolean[] free) {
    double[] wanted = solved(free);
    double step = 1;
    for (int j = 0; j < q.length; j++) {
      if (free[j] && wanted[j] < 0) {
        step = Math.min(step, q[j] / (q[j] - wanted[j]));
      }
    }
    for (int j = 0; j < q.length; j++) {
      q[j] = free[j] ? q[j] + step * (wanted[j] - q[j]) : 0;
      if (free[j] && wanted[j] <= 0 && q[j] <= 1e-15) {
        free[j] = false;
        q[j] = 0;
      }
    }
    return step == 1;
  }

  private int hardestPull(double[] q, boolean[] free) {
    int hardest = -1;
    double most = NO_PULL;
    for (int j = 0; j < q.length; j++) {
      double pull = right[j];
      for (int k = 0; k < q.length; k++) {
        pull -= normal.get(j, k) * q[k];
      }
      if (!free[j] && pull > most) {
        most = pull;
        hardest = j;
      }
    }
    return hardest;
  }

  private double[] solved(boolean[] free) {
    int[] at = IntStream.range(0, free.length).filter(j -> free[j]).toArray();
    var matrix = new DMatrixRMaj(at.length, at.length);
    var wanted = new DMatrixRMaj(at.length, 1);
    for (int a = 0; a < at.length; a++) {
      wanted.set(a, right[at[a]]);
      for (int b = 0; b < at.length; b++) {
        // a hair of ridge: two places that are always covered together cannot be told apart
        matrix.set(a, b, normal.get(at[a], at[b]) * (a == b ? 1 + 1e-12 : 1));
      }
    }
    double[] solution = new double[free.length];
    var solver = LinearSolverFactory_DDRM.symmPosDef(at.length);
    if (at.length > 0 && solver.setA(matrix)) {
      solver.solve(wanted, wanted);
      for (int a = 0; a < at.length; a++) {
        solution[at[a]] = wanted.get(a);
      }
    }
    return solution;
  }
}
