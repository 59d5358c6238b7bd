package trialwood.analysis.trial;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;
import trialwood.analysis.mixed.RandomEffect;

/**
 * The chance of each entry to be truly among the best three: truths drawn about the shrunken
 * effects with the covariance of their errors, from a fixed seed, and counted.
 */
final class BestThree {

  private static final int DRAWS = 4000;
  private static final long SEED = 20240408L;
  private static final int BEST = 3;

  private final DMatrixRMaj root;
  private final double[] gains;
  private final double sign;

  BestThree(DMatrixRMaj errors, List<RandomEffect> effects, Better better) {
    this.gains = effects.stream().mapToDouble(one -> better.gain(one.effect())).toArray();
    this.sign = better.gain(1);
    this.root = root(errors);
  }

  double[] chances() {
    int entries = gains.length;
    double[] counts = new double[entries];
    var numbers = new SplittableRandom(SEED);
    double[] standard = new double[entries];
    double[] truth = new double[entries];
    for (int draw = 0; draw < DRAWS; draw++) {
      Arrays.setAll(standard, i -> numbers.nextGaussian());
      for (int i = 0; i < entries; i++) {
        truth[i] = gains[i];
        for (int j = 0; j <= i; j++) {
          truth[i] += sign * root.get(i, j) * standard[j];
        }
      }
      double[] sorted = truth.clone();
      Arrays.sort(sorted);
      double line = sorted[Math.max(0, entries - BEST)];
      for (int i = 0; i < entries; i++) {
        counts[i] += truth[i] >= line ? 1.0 / DRAWS : 0;
      }
    }
    return counts;
  }

  /** A Cholesky factor; a trace on the diagonal keeps errors that sum to nothing positive. */
  private static DMatrixRMaj root(DMatrixRMaj errors) {
    DMatrixRMaj matrix = errors.copy();
    double most = 0;
    for (int i = 0; i < matrix.numRows; i++) {
      most = Math.max(most, matrix.get(i, i));
    }
    for (int i = 0; i < matrix.numRows; i++) {
      matrix.add(i, i, most * 1e-9 + Double.MIN_NORMAL);
    }
    var factor = new CholeskyDecompositionInner_DDRM(true);
    if (!factor.decompose(matrix)) {
      throw new IllegalStateException("The errors have no covariance.");
    }
    return factor.getT(null);
  }
}
