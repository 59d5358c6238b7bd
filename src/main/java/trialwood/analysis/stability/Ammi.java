package trialwood.analysis.stability;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.TwoWayTable;

/**
 * Additive main effects and multiplicative interaction: the interaction of g entries and q
 * environments as a sum of axes, each a product of an entry's score and an environment's,
 *
 * <pre>interaction_ij = Σ_k λ_k u_ik v_jk,  entry score u √λ, environment score v √λ</pre>
 *
 * with λ the singular values in falling order, at most min(g, q) − 1 of them. The sign of an axis
 * means nothing. Entries near the origin interact little; an entry and an environment on the same
 * side suit each other.
 *
 * <p>Source: Gauch, H. G. (1988) Model selection and validation for yield trials with interaction.
 * Biometrics 44, 705–715
 */
public final class Ammi {

  private static final double ROUNDING = 1e-12;

  private final TwoWayTable table;
  private final List<Axis> axes;
  private final DMatrixRMaj entryScores;
  private final DMatrixRMaj environmentScores;

  /**
   * One axis of the interaction.
   *
   * @param singularValue λ, not negative
   * @param share of the interaction's sum of squares, 0 to 1
   * @param squares λ² times the plots behind a cell mean
   * @param df g + q − 1 − 2k for the k-th axis (Gollob 1968)
   */
  public record Axis(double singularValue, double share, double squares, int df) {

    /**
     * Mean square of the axis over that of the error.
     *
     * <p>Source: Gollob, H. F. (1968) A statistical model which combines features of factor
     * analytic and analysis of variance techniques. Psychometrika 33, 73–115
     *
     * @param errorVariance of one plot, above 0
     */
    public double f(double errorVariance) {
      Refuse.unless(errorVariance > 0, "An error variance must be above 0: %s.", errorVariance);
      return squares / df / errorVariance;
    }

    /** Probability of so large an F if the axis were only error. */
    public double pValue(double errorVariance, double errorDf) {
      Refuse.unless(errorDf > 0, "Degrees of freedom must be above 0, not %s.", errorDf);
      return FDistribution.of(df, errorDf).survivalProbability(f(errorVariance));
    }
  }

  private Ammi(
      TwoWayTable table, List<Axis> axes, DMatrixRMaj entryScores, DMatrixRMaj environmentScores) {
    this.table = table;
    this.axes = List.copyOf(axes);
    this.entryScores = entryScores;
    this.environmentScores = environmentScores;
  }

  /**
   * Lacking where entries and environments do not interact at all.
   *
   * @param replicates plots behind each cell mean, at least 1
   */
  public static Answer<Ammi> of(TwoWayTable table, double replicates) {
    Refuse.unless(replicates >= 1, "A cell mean has at least one plot, not %s.", replicates);
    int entries = table.rows().size();
    int environments = table.columns().size();
    DMatrixRMaj interaction = new DMatrixRMaj(entries, environments);
    for (int i = 0; i < entries; i++) {
      for (int j = 0; j < environments; j++) {
        interaction.set(i, j, table.interaction(i, j));
      }
    }
    double total = table.interactionSquares();
    if (total == 0) {
      return Answer.lacking("The entries keep the same distances in every environment.");
    }
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(entries, environments, true, true, true);
    if (!svd.decompose(interaction)) {
      return Answer.lacking("The axes of the interaction did not settle.");
    }
    DMatrixRMaj u = svd.getU(null, false);
    DMatrixRMaj v = svd.getV(null, false);
    double[] values = svd.getSingularValues();
    SingularOps_DDRM.descendingOrder(u, false, values, svd.numberOfSingularValues(), v, false);
    var axes = new ArrayList<Axis>();
    for (int k = 0; k < Math.min(entries, environments) - 1; k++) {
      double squares = values[k] * values[k];
      axes.add(
          new Axis(
              values[k],
              squares / total,
              replicates * squares,
              entries + environments - 1 - 2 * (k + 1)));
    }
    scale(u, axes);
    scale(v, axes);
    return Answer.known(new Ammi(table, axes, u, v));
  }

  /** The axes, the strongest first. */
  public List<Axis> axes() {
    return axes;
  }

  /** An entry's score on the axis, 0 for the first; in the square root of the trait's unit. */
  public double entryScore(String entry, int axis) {
    return entryScores.get(table.rowOf(entry), axis);
  }

  /** An environment's score on the axis, 0 for the first. */
  public double environmentScore(String environment, int axis) {
    int column = table.columns().indexOf(environment);
    Refuse.unless(column >= 0, "%s is not in the table.", environment);
    return environmentScores.get(column, axis);
  }

  /** How far apart two entries lie on the first two axes: how differently they react. */
  public double distance(String entry, String other) {
    double squares = 0;
    for (int k = 0; k < Math.min(2, axes.size()); k++) {
      double apart = entryScore(entry, k) - entryScore(other, k);
      squares += apart * apart;
    }
    return Math.sqrt(squares);
  }

  /**
   * The entry's distance from the origin with the first axis weighed by its share of the two,
   * √((SS₁/SS₂ · score₁)² + score₂²): small for a steady entry. Lacking where a second axis is.
   *
   * <p>Source: Purchase, J. L., Hatting, H. and van Deventer, C. S. (2000) Genotype × environment
   * interaction of winter wheat. South African Journal of Plant and Soil 17, 101–107
   */
  public Answer<Double> stabilityValue(String entry) {
    if (axes.size() < 2 || axes.get(1).singularValue() <= ROUNDING * axes.get(0).singularValue()) {
      return Answer.lacking("The interaction has a single axis.");
    }
    double weight = axes.get(0).squares() / axes.get(1).squares();
    return Answer.known(Math.hypot(weight * entryScore(entry, 0), entryScore(entry, 1)));
  }

  private static void scale(DMatrixRMaj vectors, List<Axis> axes) {
    for (int k = 0; k < axes.size(); k++) {
      double root = Math.sqrt(axes.get(k).singularValue());
      for (int i = 0; i < vectors.numRows; i++) {
        vectors.set(i, k, vectors.get(i, k) * root);
      }
    }
  }
}
