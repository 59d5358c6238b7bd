package trialwood.analysis.mixed;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import trialwood.analysis.mixed.Layout.Block;

/**
 * First derivatives of −2 log REML by the variances, and the average information.
 *
 * <pre>
 * ∂/∂σₖ² = tr(PVₖ) − y'PVₖPy        AIₖₗ = y'PVₖPVₗPy        Vₖ = ZₖZₖ'
 * </pre>
 *
 * <p>Source: Gilmour, A. R., Thompson, R. and Cullis, B. R. (1995) Average information REML.
 * Biometrics 51, 1440–1450
 */
final class Slope {

  private final Evaluation at;
  private final Layout layout;
  private final int terms;
  private final double[] traces;
  private final double[] squares;
  private final double[][] residuals;
  private final WorkingValues[] working;

  Slope(Evaluation at) {
    this.at = at;
    this.layout = at.layout();
    this.terms = at.variances().length;
    this.traces = new double[terms];
    this.squares = new double[terms];
    this.residuals = new double[layout.blocks().size()][];
    this.working = new WorkingValues[terms];
    ownedTraces();
    weighResiduals();
    crossingTraces();
    residualTrace();
  }

  /** ∂(−2 log REML)/∂σₖ². */
  double[] gradient() {
    double[] gradient = new double[terms];
    for (int k = 0; k < terms; k++) {
      gradient[k] = traces[k] - squares[k];
    }
    return gradient;
  }

  /** tr(PVₖ). */
  double[] traces() {
    return traces;
  }

  /** y'PVₖPVₗPy. */
  DMatrixRMaj averageInformation() {
    var information = new DMatrixRMaj(terms, terms);
    for (int k = 0; k < terms; k++) {
      for (int l = 0; l <= k; l++) {
        double product = working[k].times(working[l], at);
        information.set(k, l, product);
        information.set(l, k, product);
      }
    }
    return information;
  }

  /** Sums Z'PZ over the pairs of cells that share a level of the term. */
  private void ownedTraces() {
    DMatrixRMaj errors = at.errorCovariance();
    for (int b = 0; b < layout.blocks().size(); b++) {
      Block block = layout.blocks().get(b);
      DMatrixRMaj precision = at.precisions().get(b);
      var half = new DMatrixRMaj(block.cells(), block.cells());
      CommonOps_DDRM.mult(precision, spread(block, errors), half);
      for (int term : block.fine()) {
        traces[term] += CommonOps_DDRM.trace(precision) - Products.dot(half.data, precision.data);
      }
      for (int t = 0; t < block.coarse().length; t++) {
        traces[block.coarse()[t]] +=
            coarseTrace(block.column()[t], block.columns(), precision, half);
      }
    }
  }

  /** Σ over the levels of 1'Q⁻¹1 − 1'Q⁻¹X · Q⁻¹1, with 1 over the cells of the level. */
  private static double coarseTrace(
      int[] column, int columns, DMatrixRMaj precision, DMatrixRMaj half) {
    int cells = column.length;
    double[] whole = new double[columns * cells];
    double[] halves = new double[columns * cells];
    double trace = 0;
    for (int c = 0; c < cells; c++) {
      int start = column[c] * cells;
      for (int d = 0; d < cells; d++) {
        whole[start + d] += precision.data[c * cells + d];
        halves[start + d] += half.data[c * cells + d];
      }
    }
    for (int d = 0; d < cells; d++) {
      trace += whole[column[d] * cells + d];
    }
    return trace - Products.dot(halves, whole);
  }

  /** Z'PZ inside one block, by cell. */
  static DMatrixRMaj inside(Block block, DMatrixRMaj precision, DMatrixRMaj errors) {
    int cells = block.cells();
    var half = new DMatrixRMaj(cells, cells);
    CommonOps_DDRM.mult(precision, spread(block, errors), half);
    var inside = precision.copy();
    CommonOps_DDRM.multAdd(-1, half, precision, inside);
    return inside;
  }

  /** MCM': what the border's errors add to the errors of the cells. */
  private static DMatrixRMaj spread(Block block, DMatrixRMaj errors) {
    int cells = block.cells();
    int border = errors.numRows;
    int[] from = block.means().from();
    int[] columns = block.means().columns();
    double[] entries = block.means().entries();
    double[] covariance = errors.data;
    var spread = new DMatrixRMaj(cells, cells);
    double[] row = new double[border];
    for (int c = 0; c < cells; c++) {
      Arrays.fill(row, 0);
      for (int i = from[c]; i < from[c + 1] - 1; i++) {
        double entry = entries[i];
        int start = columns[i] * border;
        for (int j = 0; j < border; j++) {
          row[j] += entry * covariance[start + j];
        }
      }
      for (int other = 0; other < cells; other++) {
        double sum = 0;
        for (int i = from[other]; i < from[other + 1] - 1; i++) {
          sum += entries[i] * row[columns[i]];
        }
        spread.data[c * cells + other] = sum;
      }
    }
    return spread;
  }

  /** Z'Py by cell, and from its sums by level Z'ₖPy. */
  private void weighResiduals() {
    int owned = layout.owned().size();
    double[][][] values = new double[owned][layout.blocks().size()][];
    for (int b = 0; b < residuals.length; b++) {
      Block block = layout.blocks().get(b);
      residuals[b] = at.residuals(b);
      for (int term : block.fine()) {
        values[term][b] = residuals[b];
      }
      for (int t = 0; t < block.coarse().length; t++) {
        values[block.coarse()[t]][b] = levelSums(residuals[b], block.column()[t], block.columns());
      }
      for (int term = 0; term < owned; term++) {
        squares[term] += Products.dot(residuals[b], values[term][b]);
      }
    }
    for (int term = 0; term < owned; term++) {
      working[term] = WorkingValues.of(new double[layout.border() + 1], values[term], at);
    }
  }

  /** For each cell the sum over the cells that share its level. */
  private static double[] levelSums(double[] cells, int[] column, int columns) {
    double[] byLevel = new double[columns];
    for (int c = 0; c < cells.length; c++) {
      byLevel[column[c]] += cells[c];
    }
    double[] sums = new double[cells.length];
    for (int c = 0; c < cells.length; c++) {
      sums[c] = byLevel[column[c]];
    }
    return sums;
  }

  /** Terms whose levels are border columns: Z'PZ = (I − K⁻¹)/σ², or at σ = 0 from the system. */
  private void crossingTraces() {
    int owned = layout.owned().size();
    int border = layout.border();
    for (int t = 0; t < layout.crossing().size(); t++) {
      int from = layout.start()[t];
      int to = layout.start()[t + 1];
      double variance = at.variances()[owned + t];
      double[] within = new double[border + 1];
      for (int j = from; j < to; j++) {
        double weighted;
        if (variance > 0) {
          traces[owned + t] += (1 - at.scaledInverse().get(j, j)) / variance;
          weighted = at.effects()[j] / variance;
        } else {
          traces[owned + t] += Products.quadratic(at, j);
          weighted = Products.residual(at, j);
        }
        squares[owned + t] += weighted * weighted;
        within[j] = weighted;
      }
      working[owned + t] = WorkingValues.ofColumns(within, at);
    }
  }

  /** Σ σₖ² tr(PVₖ) = n − p gives the residual's trace from the others'. */
  private void residualTrace() {
    int last = terms - 1;
    double residual = at.residual();
    double rest = layout.values() - layout.fixed().count();
    for (int k = 0; k < last; k++) {
      rest -= at.variances()[k] * traces[k];
    }
    traces[last] = rest / residual;
    int border = layout.border();
    double[] within = new double[border + 1];
    for (int j = 0; j < border; j++) {
      within[j] = -at.effects()[j] / residual;
    }
    within[border] = 1 / residual;
    double[][] cells = new double[residuals.length][];
    for (int b = 0; b < cells.length; b++) {
      Block block = layout.blocks().get(b);
      cells[b] = new double[block.cells()];
      for (int c = 0; c < cells[b].length; c++) {
        cells[b][c] = residuals[b][c] / block.counts()[c];
        squares[last] += residuals[b][c] * cells[b][c];
      }
    }
    squares[last] += Products.quadratic(layout.within(), within, within);
    working[last] = WorkingValues.of(within, cells, at);
  }
}
