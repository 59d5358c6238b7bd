package trialwood.analysis.selection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.MatrixFeatures_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * Breeding values of all plants of a pedigree, measured or not, from records on some of them: best
 * linear unbiased prediction in the model y = Xb + Zu + e, Var(u) = A σ²_A, Var(e) = I σ²_E, by
 * Henderson's mixed-model equations
 *
 * <pre>│X′X  X′Z           │ │b│   │X′y│
 * │Z′X  Z′Z + A⁻¹σ²_E/σ²_A│ │u│ = │Z′y│</pre>
 *
 * Up to {@value #DENSE} equations they are inverted, which also gives the error variances; larger
 * ones are solved by conjugate gradients and give the values alone.
 *
 * <p>Source: Henderson, C. R. (1975) Best linear unbiased estimation and prediction under a
 * selection model. Biometrics 31, 423–447; Henderson (1976) Biometrics 32, 69–83
 *
 * @param fixed estimates b by name
 * @param plants one line each, parents before offspring
 */
public record BreedingValues(Map<String, Double> fixed, List<BreedingValue> plants) {

  /** The most equations that are inverted. */
  static final int DENSE = 1_000;

  private static final String LARGE =
      "The pedigree is too large to compute how sure each value is.";

  public BreedingValues {
    fixed = Collections.unmodifiableMap(new LinkedHashMap<>(fixed));
    plants = List.copyOf(plants);
  }

  /**
   * Lacking without records, where the fixed effects cannot be told apart, where the relationship
   * matrix is singular, or where a large system does not settle.
   *
   * @param additive σ²_A, above 0
   * @param residual σ²_E, above 0
   * @throws IllegalArgumentException if a record's plant is not in the pedigree
   */
  public static Answer<BreedingValues> of(
      Pedigree pedigree, Collection<PlantRecord> records, double additive, double residual) {
    refuseUnlessVariance(additive);
    refuseUnlessVariance(residual);
    if (records.isEmpty()) {
      return Answer.lacking("No plant has been measured.");
    }
    if (!(InverseRelationships.of(pedigree)
        instanceof Answer.Known<InverseRelationships> inverse)) {
      return Answer.lacking(Pedigree.SINGULAR);
    }
    var names = new LinkedHashSet<String>();
    records.forEach(record -> names.addAll(record.fixed().keySet()));
    var equations =
        new MixedEquations(
            pedigree, inverse.answer(), List.copyOf(names), records, residual / additive);
    if (MatrixFeatures_DDRM.rank(equations.fixedPart()) < names.size()) {
      return Answer.lacking("The records cannot tell the fixed effects apart.");
    }
    return equations.size() <= DENSE
        ? Answer.known(inverted(pedigree, equations, additive, residual))
        : equations.solved().map(found -> values(pedigree, equations, found, additive));
  }

  /**
   * @throws IllegalArgumentException if the plant is not in the pedigree
   */
  public BreedingValue of(String plant) {
    return plants.stream()
        .filter(own -> own.plant().equals(plant))
        .findFirst()
        .orElseThrow(() -> Refuse.because("%s is not in the pedigree.", plant));
  }

  private static BreedingValues inverted(
      Pedigree pedigree, MixedEquations equations, double additive, double residual) {
    DMatrixRMaj inverse = new DMatrixRMaj(equations.size(), equations.size());
    var solver = LinearSolverFactory_DDRM.symmPosDef(equations.size());
    if (!solver.setA(equations.whole())) {
      throw new IllegalStateException("The mixed-model equations are not positive definite.");
    }
    solver.invert(inverse);
    DMatrixRMaj found = new DMatrixRMaj(equations.size(), 1);
    CommonOps_DDRM.mult(inverse, equations.right(), found);
    BreedingValues values = values(pedigree, equations, found.getData(), additive);
    var sure = new ArrayList<BreedingValue>();
    for (BreedingValue plant : values.plants()) {
      int equation = equations.fixed().size() + sure.size();
      double error = inverse.get(equation, equation) * residual;
      sure.add(
          new BreedingValue(
              plant.plant(), plant.value(), plant.inbreeding(), additive, Answer.known(error)));
    }
    return new BreedingValues(values.fixed(), sure);
  }

  private static BreedingValues values(
      Pedigree pedigree, MixedEquations equations, double[] found, double additive) {
    var fixed = new LinkedHashMap<String, Double>();
    for (String name : equations.fixed()) {
      fixed.put(name, found[fixed.size()]);
    }
    var plants = new ArrayList<BreedingValue>();
    for (int i = 0; i < pedigree.size(); i++) {
      double value = found[fixed.size() + i];
      plants.add(
          new BreedingValue(
              pedigree.ids().get(i),
              value,
              pedigree.inbreeding(i),
              additive,
              Answer.lacking(LARGE)));
    }
    return new BreedingValues(fixed, plants);
  }

  private static void refuseUnlessVariance(double variance) {
    Refuse.unless(
        variance > 0 && Double.isFinite(variance), "A variance must be above 0, not %s.", variance);
  }
}
