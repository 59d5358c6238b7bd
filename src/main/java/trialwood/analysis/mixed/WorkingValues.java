package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.mixed.Layout.Block;
import trialwood.analysis.mixed.Layout.SparseRows;

/**
 * A vector as long as the values, kept as what the likelihood sees of it.
 *
 * @param within weights on border columns and values that make its part inside the cells
 * @param means its cell means, block by block
 */
record WorkingValues(double[] within, double[][] means) {

  /** The vector Σ weightⱼ bⱼ of border columns. */
  static WorkingValues ofColumns(double[] weights, Layout layout) {
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
    return new WorkingValues(weights, cells);
  }

  /** w'Pv. */
  double times(WorkingValues other, Evaluation at) {
    Layout layout = at.layout();
    double product = Products.quadratic(layout.within(), within, other.within) / at.residual();
    for (int b = 0; b < means.length; b++) {
      product += Products.quadratic(at.precisions().get(b), means[b], other.means[b]);
    }
    double[] own = border(at);
    double[] others = this == other ? own : other.border(at);
    DMatrixRMaj inverse = at.scaledInverse();
    for (int i = 0; i < own.length; i++) {
      own[i] *= at.scales()[i];
      if (this != other) {
        others[i] *= at.scales()[i];
      }
    }
    return product - Products.quadratic(inverse, own, others);
  }

  /** B'V₀⁻¹w. */
  private double[] border(Evaluation at) {
    Layout layout = at.layout();
    int border = layout.border();
    double[] product = Products.times(layout.within(), within);
    double[] sums = new double[border];
    for (int j = 0; j < border; j++) {
      sums[j] = product[j] / at.residual();
    }
    for (int b = 0; b < means.length; b++) {
      SparseRows rows = layout.blocks().get(b).means();
      double[] weighted = Products.times(at.precisions().get(b), means[b]);
      for (int c = 0; c < weighted.length; c++) {
        for (int i = rows.from()[c]; i < rows.from()[c + 1] - 1; i++) {
          sums[rows.columns()[i]] += rows.entries()[i] * weighted[c];
        }
      }
    }
    return sums;
  }
}
