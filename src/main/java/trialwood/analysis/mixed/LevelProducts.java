package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import trialwood.analysis.mixed.Layout.Block;
import trialwood.analysis.mixed.Layout.SparseRows;

/**
 * Products of the indicator columns Z of one or all random terms.
 *
 * @param own Z'V₀⁻¹Z
 * @param border Z'V₀⁻¹B
 */
record LevelProducts(DMatrixRMaj own, DMatrixRMaj border) {

  /** Of one owned term. */
  static LevelProducts of(Evaluation at, int term) {
    Layout layout = at.layout();
    var products = empty(layout.owned().get(term).levels().size(), layout.border());
    products.add(at, term, 0, term, 0);
    return products;
  }

  /** Of every random term, one after the other: owned first, then crossing. */
  static LevelProducts ofAll(Evaluation at) {
    Layout layout = at.layout();
    int[] start = starts(layout);
    int owned = start[layout.owned().size()];
    int fixed = layout.fixed().count();
    int crossing = layout.border() - fixed;
    var products = empty(owned + crossing, layout.border());
    for (int term = 0; term < layout.owned().size(); term++) {
      for (int other = 0; other < layout.owned().size(); other++) {
        products.add(at, term, start[term], other, start[other]);
      }
    }
    for (int i = 0; i < crossing; i++) {
      for (int j = 0; j < layout.border(); j++) {
        products.border.set(owned + i, j, at.system().get(fixed + i, j));
      }
      for (int j = 0; j < crossing; j++) {
        products.own.set(owned + i, owned + j, at.system().get(fixed + i, fixed + j));
      }
      for (int j = 0; j < owned; j++) {
        double product = products.border.get(j, fixed + i);
        products.own.set(owned + i, j, product);
        products.own.set(j, owned + i, product);
      }
    }
    return products;
  }

  /** First row of each owned term, and one past the last. */
  static int[] starts(Layout layout) {
    int[] start = new int[layout.owned().size() + 1];
    for (int term = 0; term < layout.owned().size(); term++) {
      start[term + 1] = start[term] + layout.owned().get(term).levels().size();
    }
    return start;
  }

  /** Z'PZ = Z'V₀⁻¹Z − Z'V₀⁻¹B C B'V₀⁻¹Z. */
  DMatrixRMaj projected(DMatrixRMaj errors) {
    var half = new DMatrixRMaj(border.numRows, border.numCols);
    CommonOps_DDRM.mult(border, errors, half);
    DMatrixRMaj projected = own.copy();
    if (border.numCols > 0) {
      var rest = new DMatrixRMaj(own.numRows, own.numCols);
      CommonOps_DDRM.multTransB(half, border, rest);
      CommonOps_DDRM.subtractEquals(projected, rest);
    }
    return projected;
  }

  private static LevelProducts empty(int levels, int border) {
    return new LevelProducts(new DMatrixRMaj(levels, levels), new DMatrixRMaj(levels, border));
  }

  /** Adds the products of two owned terms; with themselves also those with the border. */
  private void add(Evaluation at, int term, int row, int other, int column) {
    Layout layout = at.layout();
    for (int b = 0; b < layout.blocks().size(); b++) {
      Block block = layout.blocks().get(b);
      DMatrixRMaj precision = at.precisions().get(b);
      int[] level = block.levels()[term];
      int[] others = block.levels()[other];
      SparseRows means = block.means();
      for (int c = 0; c < level.length; c++) {
        for (int d = 0; d < level.length; d++) {
          double weight = precision.get(c, d);
          own.add(row + level[c], column + others[d], weight);
          for (int i = means.from()[d]; term == other && i < means.from()[d + 1] - 1; i++) {
            border.add(row + level[c], means.columns()[i], weight * means.entries()[i]);
          }
        }
      }
    }
  }
}
