package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.mixed.Layout.Block;

/**
 * Shrunken effects and the covariance of their errors: û = σₖ²Z'ₖPy and Var(û − u) = σₖ²I −
 * σₖ⁴Z'ₖPZₖ.
 *
 * <p>Source: Henderson, C. R. (1975) Best linear unbiased estimation and prediction under a
 * selection model. Biometrics 31, 423–447
 */
final class Shrunken {

  private final Evaluation at;
  private final Layout layout;
  private final int owned;

  Shrunken(Evaluation at) {
    this.at = at;
    this.layout = at.layout();
    this.owned = layout.owned().size();
  }

  List<RandomEffect> effects(int term) {
    double variance = at.variances()[term];
    List<String> levels = factor(term).levels();
    double[] effects = term < owned ? ownedEffects(term) : crossingEffects(term);
    double[] errors = diagonal(term, at.errorCovariance());
    double[] conditional = diagonal(term, knownFixed());
    var all = new ArrayList<RandomEffect>();
    for (int i = 0; i < effects.length; i++) {
      double reliability = variance > 0 ? 1 - errors[i] / variance : 0;
      all.add(new RandomEffect(levels.get(i), effects[i], errors[i], conditional[i], reliability));
    }
    return List.copyOf(all);
  }

  DMatrixRMaj errorCovariance(int term) {
    DMatrixRMaj errors = at.errorCovariance();
    return term < owned
        ? ownedCovariance(term, errors)
        : part(errors, layout.start()[term - owned], layout.start()[term - owned + 1]);
  }

  private Factor factor(int term) {
    return term < owned ? layout.owned().get(term) : layout.crossing().get(term - owned);
  }

  private double[] ownedEffects(int term) {
    double[] effects = new double[factor(term).levels().size()];
    for (int b = 0; b < layout.blocks().size(); b++) {
      int[] level = layout.blocks().get(b).levels()[term];
      double[] residuals = at.residuals(b);
      for (int c = 0; c < level.length; c++) {
        effects[level[c]] += at.variances()[term] * residuals[c];
      }
    }
    return effects;
  }

  private double[] crossingEffects(int term) {
    return Arrays.copyOfRange(
        at.effects(), layout.start()[term - owned], layout.start()[term - owned + 1]);
  }

  /** Error variances with border errors of the given covariance. */
  private double[] diagonal(int term, DMatrixRMaj border) {
    double[] errors = new double[factor(term).levels().size()];
    if (term >= owned) {
      for (int i = 0; i < errors.length; i++) {
        int column = layout.start()[term - owned] + i;
        errors[i] = border.get(column, column);
      }
      return errors;
    }
    double variance = at.variances()[term];
    Arrays.fill(errors, variance);
    for (int b = 0; b < layout.blocks().size(); b++) {
      Block block = layout.blocks().get(b);
      int[] level = block.levels()[term];
      DMatrixRMaj inside = Slope.inside(block, at.precisions().get(b), border);
      for (int i = 0; i < level.length; i++) {
        for (int j = 0; j < level.length; j++) {
          if (level[i] == level[j]) {
            errors[level[i]] -= variance * variance * inside.get(i, j);
          }
        }
      }
    }
    return errors;
  }

  /** C with the fixed effects known: only crossing terms are left to be in error. */
  private DMatrixRMaj knownFixed() {
    int fixed = layout.fixed().count();
    int border = layout.border();
    var known = new DMatrixRMaj(border, border);
    if (border > fixed) {
      double[] scale = at.scales();
      var inner = new DMatrixRMaj(border - fixed, border - fixed);
      for (int i = fixed; i < border; i++) {
        for (int j = fixed; j < border; j++) {
          double scaled = scale[i] * at.system().get(i, j) * scale[j];
          inner.set(i - fixed, j - fixed, scaled + (i == j ? 1 : 0));
        }
      }
      PositiveDefinite.invert(inner);
      for (int i = fixed; i < border; i++) {
        for (int j = fixed; j < border; j++) {
          known.set(i, j, scale[i] * inner.get(i - fixed, j - fixed) * scale[j]);
        }
      }
    }
    return known;
  }

  private DMatrixRMaj ownedCovariance(int term, DMatrixRMaj errors) {
    double square = at.variances()[term] * at.variances()[term];
    DMatrixRMaj covariance = LevelProducts.of(at, term).projected(errors);
    for (int i = 0; i < covariance.data.length; i++) {
      covariance.data[i] *= -square;
    }
    for (int i = 0; i < covariance.numRows; i++) {
      covariance.add(i, i, at.variances()[term]);
    }
    return covariance;
  }

  private static DMatrixRMaj part(DMatrixRMaj matrix, int from, int to) {
    var part = new DMatrixRMaj(to - from, to - from);
    for (int i = from; i < to; i++) {
      for (int j = from; j < to; j++) {
        part.set(i - from, j - from, matrix.get(i, j));
      }
    }
    return part;
  }
}
