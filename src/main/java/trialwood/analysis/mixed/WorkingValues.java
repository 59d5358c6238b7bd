package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.mixed.Layout.Block;
import trialwood.analysis.mixed.Layout.SparseRows;

/**
 * A vector w as long as the values, kept as what the likelihood sees of it, for products w'Pv.
 *
 * @param within weights on border columns and values that make its part inside the cells
 * @param spread the cross-products of that part with border columns and values
 * @param means its cell means, block by block
 * @param weighted Q⁻¹ times these
 * @param border ΛB'V₀⁻¹w
 */
record WorkingValues(
    double[] within, double[] spread, double[][] means, double[][] weighted, double[] border) {

  /** The vector Σ weightⱼ bⱼ of border columns. */
  static WorkingValues ofColumns(double[] weights, Evaluation at) {
    Layout layout = at.layout();
    double[][] cells = new double[layout.blocks().size()][];
    for (int b = 0; b < cells.length; b++) {
      Block block = layout.blocks().get(b);
      SparseRows means = block.means();
      cells[b] = new double[block.cells()];
      for (int c = 0; c < cells[b].length; c++) {
        for (int i = means.from()[c]; i < means.from()[c + 1]; i++) {
          cells[b][c] += means.entries()[i] * weights[means.columns()[i]];
        }
      }
    }
    return of(weights, cells, at);
  }

  static WorkingValues of(double[] within, double[][] means, Evaluation at) {
    Layout layout = at.layout();
    double[] spread = Products.times(layout.within(), within);
    double[] border = new double[layout.border()];
    for (int j = 0; j < border.length; j++) {
      border[j] = spread[j] / at.residual();
    }
    double[][] weighted = new double[means.length][];
    for (int b = 0; b < means.length; b++) {
      SparseRows rows = layout.blocks().get(b).means();
      weighted[b] = Products.times(at.precisions().get(b), means[b]);
      for (int c = 0; c < weighted[b].length; c++) {
        for (int i = rows.from()[c]; i < rows.from()[c + 1] - 1; i++) {
          border[rows.columns()[i]] += rows.entries()[i] * weighted[b][c];
        }
      }
    }
    for (int j = 0; j < border.length; j++) {
      border[j] *= at.scales()[j];
    }
    return new WorkingValues(within, spread, means, weighted, border);
  }

  /** w'Pv. */
  double times(WorkingValues other, Evaluation at) {
    DMatrixRMaj inverse = at.scaledInverse();
    double product = Products.dot(within, other.spread) / at.residual();
    for (int b = 0; b < means.length; b++) {
      product += Products.dot(means[b], other.weighted[b]);
    }
    return product - Products.quadratic(inverse, border, other.border);
  }
}
