package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;
import org.ejml.dense.row.linsol.chol.LinearSolverChol_DDRM;

/** Symmetric positive definite matrices: log determinant and inverse at once. */
final class PositiveDefinite {

  private PositiveDefinite() {}

  /**
   * Puts the inverse in place of the matrix and returns the log of its determinant, by a Cholesky
   * factor.
   */
  static double invert(DMatrixRMaj matrix) {
    if (matrix.numRows == 0) {
      return 0;
    }
    var factor = new CholeskyDecompositionInner_DDRM(true);
    var solver = new LinearSolverChol_DDRM(factor);
    var inverse = new DMatrixRMaj(matrix.numRows, matrix.numCols);
    if (!solver.setA(matrix)) {
      throw new IllegalStateException("The matrix has no inverse.");
    }
    double log = 0;
    for (int i = 0; i < matrix.numRows; i++) {
      log += 2 * Math.log(factor.getT().get(i, i));
    }
    solver.invert(inverse);
    matrix.setTo(inverse);
    return log;
  }
}
