package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.List;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;

/**
 * QR decomposition with the columns in their given order: each is cleared of all before it, twice
 * over so that no digits are lost, and set aside where nothing of it is left (1e-7 of its length).
 * EJML's own rank-revealing decompositions move the longest column to the front and would not say
 * which term comes after which; its triangular solver is used.
 *
 * <p>Source: Björck, Å. (1996) Numerical Methods for Least Squares Problems, section 2.4; the rule
 * for columns set aside is that of lm in R
 *
 * @param kept numbers of the columns kept, in order
 * @param aliased numbers of the columns set aside
 * @param directions orthonormal, one for each column kept
 * @param lower Rᵀ by rows, square in the number of columns kept
 * @param aliasing for each column set aside the columns kept as whose sum it can be written
 */
record OrthogonalColumns(
    int[] kept, int[] aliased, double[][] directions, double[] lower, double[][] aliasing) {

  private static final double NOTHING_LEFT = 1e-7;

  static OrthogonalColumns of(double[][] columns) {
    var directions = new ArrayList<double[]>();
    var kept = new ArrayList<Integer>();
    var aliased = new ArrayList<Integer>();
    var rows = new ArrayList<double[]>();
    var aliasedRows = new ArrayList<double[]>();
    for (int column = 0; column < columns.length; column++) {
      double[] left = columns[column].clone();
      double length = Math.sqrt(dot(left, left));
      double[] row = new double[directions.size() + 1];
      for (int pass = 0; pass < 2; pass++) {
        for (int k = 0; k < directions.size(); k++) {
          row[k] += clear(left, directions.get(k));
        }
      }
      double rest = Math.sqrt(dot(left, left));
      if (rest <= NOTHING_LEFT * length) {
        aliased.add(column);
        aliasedRows.add(row);
      } else {
        row[directions.size()] = rest;
        for (int i = 0; i < left.length; i++) {
          left[i] /= rest;
        }
        directions.add(left);
        kept.add(column);
        rows.add(row);
      }
    }
    double[] lower = square(rows);
    return new OrthogonalColumns(
        kept.stream().mapToInt(Integer::intValue).toArray(),
        aliased.stream().mapToInt(Integer::intValue).toArray(),
        directions.toArray(double[][]::new),
        lower,
        aliasing(lower, rows.size(), aliasedRows));
  }

  int rank() {
    return kept.length;
  }

  /** Takes the part along a direction out of a vector, and says how long it was. */
  static double clear(double[] vector, double[] direction) {
    double part = dot(vector, direction);
    for (int i = 0; i < vector.length; i++) {
      vector[i] -= part * direction[i];
    }
    return part;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** R⁻ᵀc of a function's coefficients of the columns kept. */
  double[] solve(double[] coefficients) {
    double[] solution = coefficients.clone();
    TriangularSolver_DDRM.solveL(lower, solution, rank());
    return solution;
  }

  private static double[] square(List<double[]> rows) {
    double[] square = new double[rows.size() * rows.size()];
    for (int k = 0; k < rows.size(); k++) {
      System.arraycopy(rows.get(k), 0, square, k * rows.size(), k + 1);
    }
    return square;
  }

  private static double[][] aliasing(double[] lower, int rank, List<double[]> rows) {
    double[][] aliasing = new double[rows.size()][rank];
    for (int i = 0; i < aliasing.length; i++) {
      System.arraycopy(rows.get(i), 0, aliasing[i], 0, Math.min(rank, rows.get(i).length));
      TriangularSolver_DDRM.solveTranL(lower, aliasing[i], rank);
    }
    return aliasing;
  }
}
