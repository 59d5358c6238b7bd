package trialwood.analysis.mixed;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.mixed.Layout.Block;

/**
 * Inverts the covariance of a block's cell means. Terms that give every cell of the block a level
 * of its own, and the residual, lie on the diagonal D; the others are the columns of L, an
 * indicator of the level times the standard deviation of the term, of which there are far fewer
 * than cells:
 *
 * <pre>
 * Q = D + LL'        Q⁻¹ = D⁻¹ − D⁻¹L S⁻¹ L'D⁻¹        S = I + L'D⁻¹L        |Q| = |D| |S|
 * </pre>
 *
 * <p>Source: Henderson, H. V. and Searle, S. R. (1981) On deriving the inverse of a sum of
 * matrices. SIAM Review 23, 53–60
 */
final class CellCovariance {

  private final double[] variances;
  private final double residual;
  private double logDeterminant;

  CellCovariance(double[] variances, double residual) {
    this.variances = variances;
    this.residual = residual;
  }

  /** log|Q| of the block inverted last. */
  double logDeterminant() {
    return logDeterminant;
  }

  /** Q⁻¹. */
  DMatrixRMaj inverse(Block block) {
    double[] weights = weights(block);
    int[] coarse = block.coarse();
    double[] sd = new double[coarse.length];
    for (int t = 0; t < coarse.length; t++) {
      sd[t] = Math.sqrt(variances[coarse[t]]);
    }
    DMatrixRMaj inner = inner(block, weights, sd);
    logDeterminant += PositiveDefinite.invert(inner);
    return outer(block, weights, sd, inner);
  }

  /** D⁻¹; starts the log determinant with that of D. */
  private double[] weights(Block block) {
    double diagonal = 0;
    for (int term : block.fine()) {
      diagonal += variances[term];
    }
    double[] weights = new double[block.cells()];
    double product = 1;
    logDeterminant = 0;
    for (int c = 0; c < weights.length; c++) {
      weights[c] = 1 / (diagonal + residual / block.counts()[c]);
      product *= weights[c];
      if (!(product > 1e-200 && product < 1e200)) {
        logDeterminant -= Math.log(product);
        product = 1;
      }
    }
    logDeterminant -= Math.log(product);
    return weights;
  }

  private static DMatrixRMaj inner(Block block, double[] weights, double[] sd) {
    int size = block.columns();
    var inner = new DMatrixRMaj(size, size);
    double[] sums = inner.data;
    int[][] column = block.column();
    for (int t = 0; t < sd.length; t++) {
      for (int u = 0; u < sd.length; u++) {
        double product = sd[t] * sd[u];
        int[] rows = column[t];
        int[] columns = column[u];
        for (int c = 0; c < weights.length; c++) {
          sums[rows[c] * size + columns[c]] += product * weights[c];
        }
      }
    }
    for (int j = 0; j < size; j++) {
      sums[j * size + j] += 1;
    }
    return inner;
  }

  private static DMatrixRMaj outer(Block block, double[] weights, double[] sd, DMatrixRMaj inner) {
    int cells = weights.length;
    int size = block.columns();
    int[][] column = block.column();
    var inverse = new DMatrixRMaj(cells, cells);
    double[] row = new double[size];
    double[] result = inverse.data;
    for (int c = 0; c < cells; c++) {
      Arrays.fill(row, 0);
      for (int t = 0; t < sd.length; t++) {
        double share = weights[c] * sd[t];
        int start = column[t][c] * size;
        for (int j = 0; j < size; j++) {
          row[j] -= share * inner.data[start + j];
        }
      }
      int place = c * cells;
      for (int u = 0; u < sd.length; u++) {
        int[] columns = column[u];
        double own = sd[u];
        for (int d = 0; d < cells; d++) {
          result[place + d] += own * row[columns[d]];
        }
      }
      for (int d = 0; d < cells; d++) {
        result[place + d] *= weights[d];
      }
      result[place + c] += weights[c];
    }
    return inverse;
  }
}
