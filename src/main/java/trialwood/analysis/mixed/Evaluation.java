package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import trialwood.analysis.mixed.Layout.Block;
import trialwood.analysis.mixed.Layout.SparseRows;

/**
 * The restricted likelihood at given variances, and the solution of the mixed-model equations.
 *
 * <p>With V₀ the covariance without the crossing terms, B the border columns, Λ the standard
 * deviations of the crossing terms (1 for fixed columns) and D the identity on crossing columns, 0
 * on fixed ones:
 *
 * <pre>
 * H = B'V₀⁻¹B        K = ΛHΛ + D        C = ΛK⁻¹Λ        P = V₀⁻¹ − V₀⁻¹B C B'V₀⁻¹
 * −2 log REML = log|V₀| + log|K| + y'Py + (n − p) log 2π
 * </pre>
 *
 * <p>V₀ falls into the blocks of {@link Layout}. Of a block only the inverse Q⁻¹ of the covariance
 * of its cell means is needed, Q = G + diag(σ²/nᵢ).
 */
final class Evaluation {

  private final Layout layout;
  private final double[] variances;

  /** Q⁻¹ of each block. */
  private final List<DMatrixRMaj> precisions = new ArrayList<>();

  /** H, bordered by B'V₀⁻¹y and y'V₀⁻¹y. */
  private final DMatrixRMaj system;

  private final double[] scale;
  private final DMatrixRMaj scaledInverse;
  private final double[] solution;
  private final double criterion;

  /**
   * @param variances of the owned terms, the crossing terms and the residual, in this order
   */
  Evaluation(Layout layout, double[] variances) {
    this.layout = layout;
    this.variances = variances;
    double residual = residual();
    system = layout.within().copy();
    CommonOps_DDRM.scale(1 / residual, system);
    double log = (layout.values() - layout.cells()) * Math.log(residual) + layout.sumLogCells();
    var covariance = new CellCovariance(variances, residual);
    for (Block block : layout.blocks()) {
      DMatrixRMaj precision = covariance.inverse(block);
      log += covariance.logDeterminant();
      precisions.add(precision);
      add(block, precision);
    }
    scale = scale();
    scaledInverse = scaledSystem();
    log += PositiveDefinite.invert(scaledInverse);
    solution = solution();
    int border = layout.border();
    double fit = system.get(border, border);
    for (int j = 0; j < border; j++) {
      fit -= solution[j] * system.get(j, border);
    }
    criterion = log + fit + (layout.values() - layout.fixed().count()) * Math.log(2 * Math.PI);
  }

  Layout layout() {
    return layout;
  }

  double[] variances() {
    return variances;
  }

  double residual() {
    return variances[variances.length - 1];
  }

  /** −2 log REML. */
  double criterion() {
    return criterion;
  }

  List<DMatrixRMaj> precisions() {
    return precisions;
  }

  DMatrixRMaj system() {
    return system;
  }

  /** K⁻¹. */
  DMatrixRMaj scaledInverse() {
    return scaledInverse;
  }

  /** Λ, its diagonal. */
  double[] scales() {
    return scale;
  }

  /** Fixed effects and effects of the crossing terms, by border column. */
  double[] effects() {
    return solution;
  }

  /** Z'Py of one block, by cell. */
  double[] residuals(int number) {
    Block block = layout.blocks().get(number);
    SparseRows means = block.means();
    double[] off = new double[block.cells()];
    for (int c = 0; c < off.length; c++) {
      int last = means.from()[c + 1] - 1;
      off[c] = means.entries()[last];
      for (int i = means.from()[c]; i < last; i++) {
        off[c] -= means.entries()[i] * solution[means.columns()[i]];
      }
    }
    return Products.times(precisions.get(number), off);
  }

  /** C = ΛK⁻¹Λ: the covariance of the border's errors. */
  DMatrixRMaj errorCovariance() {
    DMatrixRMaj covariance = scaledInverse.copy();
    for (int i = 0; i < scale.length; i++) {
      for (int j = 0; j < scale.length; j++) {
        covariance.data[i * scale.length + j] *= scale[i] * scale[j];
      }
    }
    return covariance;
  }

  /** Adds M'Q⁻¹M of a block to the system, M being its cell means. */
  private void add(Block block, DMatrixRMaj precision) {
    int width = layout.border() + 1;
    int[] from = block.means().from();
    int[] columns = block.means().columns();
    double[] entries = block.means().entries();
    double[] sums = system.data;
    double[] weighted = new double[width];
    for (int c = 0; c < block.cells(); c++) {
      weightedMeans(block, precision, c, weighted);
      for (int at = from[c]; at < from[c + 1]; at++) {
        double entry = entries[at];
        int row = columns[at] * width;
        for (int j = 0; j < width; j++) {
          sums[row + j] += entry * weighted[j];
        }
      }
    }
  }

  /** Row c of Q⁻¹M. */
  private static void weightedMeans(Block block, DMatrixRMaj precision, int c, double[] into) {
    Arrays.fill(into, 0);
    int cells = block.cells();
    int[] from = block.means().from();
    int[] columns = block.means().columns();
    double[] entries = block.means().entries();
    double[] weights = precision.data;
    for (int other = 0; other < cells; other++) {
      double weight = weights[c * cells + other];
      for (int at = from[other]; at < from[other + 1]; at++) {
        into[columns[at]] += weight * entries[at];
      }
    }
  }

  private double[] scale() {
    double[] sd = new double[layout.border()];
    Arrays.fill(sd, 0, layout.fixed().count(), 1);
    for (int term = 0; term < layout.crossing().size(); term++) {
      double own = Math.sqrt(variances[layout.owned().size() + term]);
      Arrays.fill(sd, layout.start()[term], layout.start()[term + 1], own);
    }
    return sd;
  }

  private DMatrixRMaj scaledSystem() {
    int border = scale.length;
    var scaled = new DMatrixRMaj(border, border);
    for (int i = 0; i < border; i++) {
      for (int j = 0; j < border; j++) {
        scaled.data[i * border + j] =
            scale[i] * system.data[i * (border + 1) + j] * scale[j]
                + (i == j && i >= layout.fixed().count() ? 1 : 0);
      }
    }
    return scaled;
  }

  private double[] solution() {
    int border = scale.length;
    double[] effects = new double[border];
    for (int i = 0; i < border; i++) {
      for (int j = 0; j < border; j++) {
        effects[i] +=
            scale[i]
                * scaledInverse.data[i * border + j]
                * scale[j]
                * system.data[j * (border + 1) + border];
      }
    }
    return effects;
  }
}
