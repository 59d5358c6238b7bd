package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.Refuse;

/** A fitted mixed model: variances, fixed effects, shrunken effects, and how sure each is. */
public final class MixedFit {

  static final String RESIDUAL = "Residual";

  private final Evaluation at;
  private final Layout layout;
  private final DMatrixRMaj errors;
  private final double centre;

  /**
   * @param end of the search on values less their centre
   */
  MixedFit(RemlSearch.End end, double centre) {
    this.at = end.at();
    this.layout = at.layout();
    this.errors = at.errorCovariance();
    this.centre = centre;
  }

  public int values() {
    return layout.values();
  }

  /** How many fixed effects could be told apart. */
  public int fixedEffectsCount() {
    return layout.fixed().count();
  }

  /** Levels of fixed factors that the ones before them settle. */
  public List<String> confounded() {
    return layout.fixed().confounded();
  }

  /** −2 log REML, log|V| + log|X'V⁻¹X| + y'Py + (n − p) log 2π. */
  public double criterion() {
    return at.criterion();
  }

  /** One a random term, the residual last. */
  public List<VarianceComponent> variances() {
    var components = new ArrayList<VarianceComponent>();
    List<Factor> terms = terms();
    for (int k = 0; k < terms.size(); k++) {
      components.add(
          new VarianceComponent(
              terms.get(k).name(), at.variances()[k], terms.get(k).levels().size()));
    }
    components.add(new VarianceComponent(RESIDUAL, at.residual(), layout.values()));
    return List.copyOf(components);
  }

  /**
   * The variance of a term, {@code Residual} for the residual.
   *
   * @throws IllegalArgumentException if the model has no such term
   */
  public double variance(String term) {
    return variances().stream()
        .filter(component -> component.term().equals(term))
        .findFirst()
        .orElseThrow(() -> unknown(term))
        .variance();
  }

  /** The value at the first level of every factor, then each other level's difference from it. */
  public List<FixedEffect> fixedEffects() {
    FixedPart fixed = layout.fixed();
    var effects = new ArrayList<FixedEffect>();
    double[] base = new double[fixed.count()];
    base[fixed.columns()[0][0]] = 1;
    effects.add(effect("", "", base, centre));
    for (int f = 0; f < fixed.columns().length; f++) {
      for (int level = 1; level < fixed.columns()[f].length; level++) {
        int column = fixed.columns()[f][level];
        if (column >= 0) {
          double[] weights = new double[fixed.count()];
          weights[column] = 1;
          weights[fixed.columns()[0][0]] -= f == 0 ? 1 : 0;
          Factor factor = fixed.factors().get(f);
          effects.add(effect(factor.name(), factor.levels().get(level), weights, 0));
        }
      }
    }
    return List.copyOf(effects);
  }

  private FixedEffect effect(String factor, String level, double[] weights, double zero) {
    return new FixedEffect(
        factor,
        level,
        zero + Products.dot(weights, at.effects()),
        Math.sqrt(Products.quadratic(errors, weights, weights)));
  }

  /**
   * The adjusted means of the levels of a fixed factor, every level of the other fixed factors
   * weighing alike.
   *
   * @throws IllegalArgumentException if the model has no such fixed factor, or has confounded
   *     levels
   */
  public AdjustedMeans means(String factor) {
    FixedPart fixed = layout.fixed();
    int target = index(fixed.factors(), factor);
    Refuse.unless(
        fixed.confounded().isEmpty(), "Confounded: %s.", String.join(", ", fixed.confounded()));
    List<String> levels = fixed.factors().get(target).levels();
    double[][] weights = new double[levels.size()][];
    double[] means = new double[levels.size()];
    for (int level = 0; level < means.length; level++) {
      weights[level] = fixed.meanOf(target, level);
      means[level] = centre + Products.dot(weights[level], at.effects());
    }
    var covariance = new DMatrixRMaj(means.length, means.length);
    for (int i = 0; i < means.length; i++) {
      for (int j = 0; j <= i; j++) {
        double product = Products.quadratic(errors, weights[i], weights[j]);
        covariance.set(i, j, product);
        covariance.set(j, i, product);
      }
    }
    return new AdjustedMeans(levels, means, covariance);
  }

  /**
   * The shrunken effects of a random term, by level.
   *
   * @throws IllegalArgumentException if the model has no such random term
   */
  public List<RandomEffect> effects(String term) {
    return new Shrunken(at).effects(index(terms(), term));
  }

  /**
   * The covariance of the errors of a random term's effects, level by level.
   *
   * @throws IllegalArgumentException if the model has no such random term
   */
  public DMatrixRMaj errorCovariance(String term) {
    return new Shrunken(at).errorCovariance(index(terms(), term));
  }

  /** Standard errors of the variances, in the order of {@link #variances()}. */
  public VarianceErrors varianceErrors() {
    return VarianceErrors.of(at);
  }

  private List<Factor> terms() {
    return Stream.concat(layout.owned().stream(), layout.crossing().stream()).toList();
  }

  private static int index(List<Factor> factors, String name) {
    for (int i = 0; i < factors.size(); i++) {
      if (factors.get(i).name().equals(name)) {
        return i;
      }
    }
    throw unknown(name);
  }

  private static IllegalArgumentException unknown(String name) {
    return new IllegalArgumentException("The model has no %s.".formatted(name));
  }
}
