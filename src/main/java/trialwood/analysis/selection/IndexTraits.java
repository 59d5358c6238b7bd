package trialwood.analysis.selection;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import trialwood.analysis.Refuse;

/**
 * Several traits to be improved together: their phenotypic (co)variances P and genetic
 * (co)variances G, n × n, and the weights of an index Σ bⱼxⱼ over the traits.
 *
 * <p>Weights are shown with every index, never applied silently: they follow from what the breeder
 * says a unit of each trait is worth, or from the gains wanted.
 */
public final class IndexTraits {

  private static final double ROUNDING = 1e-9;

  private final DMatrixRMaj phenotypic;
  private final DMatrixRMaj genetic;

  /**
   * @param phenotypic P, symmetric and positive definite
   * @param genetic G, symmetric, not negative on its diagonal
   * @throws IllegalArgumentException if one of them is not
   */
  public IndexTraits(double[][] phenotypic, double[][] genetic) {
    this.phenotypic = symmetric(phenotypic, "phenotypic");
    this.genetic = symmetric(genetic, "genetic");
    Refuse.unless(
        this.phenotypic.numRows == this.genetic.numRows,
        "%d traits have phenotypic but %d genetic variances.",
        this.phenotypic.numRows,
        this.genetic.numRows);
    Refuse.unless(
        DecompositionFactory_DDRM.chol(this.phenotypic.numRows, true)
            .decompose(this.phenotypic.copy()),
        "These phenotypic variances and covariances cannot occur together.");
    for (int j = 0; j < this.genetic.numRows; j++) {
      Refuse.unless(this.genetic.get(j, j) >= 0, "A genetic variance cannot be negative.");
    }
  }

  public int traits() {
    return phenotypic.numRows;
  }

  /**
   * The index that follows total worth most closely, b = P⁻¹Ga.
   *
   * <p>Sources: Smith, H. F. (1936) A discriminant function for plant selection. Annals of Eugenics
   * 7, 240–250; Hazel, L. N. (1943) The genetic basis for constructing selection indexes. Genetics
   * 28, 476–490
   *
   * @param worth a, of one unit of each trait
   */
  public SelectionIndex forWorth(double... worth) {
    DMatrixRMaj a = column(worth, "worth");
    DMatrixRMaj b = solved(phenotypic, times(genetic, a));
    return new SelectionIndex(this, b.getData(), a.getData());
  }

  /**
   * The index whose gains stand in the proportions wanted, b = G⁻¹d.
   *
   * <p>Source: Pesek, J. and Baker, R. J. (1969) Desired improvement in relation to selection
   * indices. Canadian Journal of Plant Science 49, 803–804
   *
   * @param gains d, wanted in each trait
   * @throws IllegalArgumentException if the traits' genetic variances do not allow every proportion
   */
  public double[] weightsForGains(double... gains) {
    return solved(genetic, column(gains, "gain wanted")).getData();
  }

  /**
   * What selecting for one trait alone gains in it: i G_jj/√P_jj.
   *
   * @param trait its position
   * @param intensity i
   */
  public double singleTraitResponse(int trait, double intensity) {
    return intensity * genetic.get(trait, trait) / Math.sqrt(phenotypic.get(trait, trait));
  }

  /** Covariance of each trait's breeding value with the index. */
  double[] withIndex(double[] weights) {
    return times(genetic, DMatrixRMaj.wrap(traits(), 1, weights)).getData();
  }

  double phenotypicVariance(double[] weights) {
    return square(phenotypic, weights);
  }

  double geneticVariance(double[] weights) {
    return square(genetic, weights);
  }

  private static double square(DMatrixRMaj matrix, double[] weights) {
    DMatrixRMaj vector = DMatrixRMaj.wrap(weights.length, 1, weights);
    return CommonOps_DDRM.dot(vector, times(matrix, vector));
  }

  private DMatrixRMaj column(double[] values, String what) {
    Refuse.unless(values.length == traits(), "%d traits but %d values.", traits(), values.length);
    for (double value : values) {
      Refuse.unlessFinite(value, what);
    }
    return DMatrixRMaj.wrap(values.length, 1, values.clone());
  }

  private static DMatrixRMaj times(DMatrixRMaj matrix, DMatrixRMaj vector) {
    DMatrixRMaj product = new DMatrixRMaj(matrix.numRows, 1);
    CommonOps_DDRM.mult(matrix, vector, product);
    return product;
  }

  private static DMatrixRMaj solved(DMatrixRMaj matrix, DMatrixRMaj right) {
    var solver = LinearSolverFactory_DDRM.linear(matrix.numRows);
    DMatrixRMaj solution = new DMatrixRMaj(matrix.numRows, 1);
    Refuse.unless(
        solver.setA(matrix.copy()) && solver.quality() > 1e-14,
        "These traits go together so closely that no single set of weights is right.");
    solver.solve(right, solution);
    return solution;
  }

  private static DMatrixRMaj symmetric(double[][] values, String which) {
    Refuse.unless(values.length > 0, "An index needs at least one trait.");
    for (int i = 0; i < values.length; i++) {
      Refuse.unless(values[i].length == values.length, "The %s table is not square.", which);
      for (int j = 0; j < values.length; j++) {
        Refuse.unlessFinite(values[i][j], which + " variance");
        double size = Math.sqrt(Math.abs(values[i][i] * values[j][j]));
        Refuse.unless(
            Math.abs(values[i][j] - values[j][i]) <= ROUNDING * size,
            "The %s table is not symmetric.",
            which);
      }
    }
    return new DMatrixRMaj(values);
  }
}
