package trialwood.analysis.selection;

import java.util.Collection;
import trialwood.analysis.Refuse;

/**
 * The measured plants of one family.
 *
 * @param family its name
 * @param plants n, at least 1
 * @param mean of the plants
 * @param squares Σ(value − mean)²
 */
public record FamilySample(String family, int plants, double mean, double squares) {

  public FamilySample {
    Refuse.unless(plants > 0, "A family has at least one plant, not %d.", plants);
    Refuse.unlessFinite(mean, "mean of a family");
    Refuse.unless(
        squares >= 0 && Double.isFinite(squares), "Squares are 0 or above, not %s.", squares);
  }

  /**
   * @throws IllegalArgumentException if there is no value, or one is not finite
   */
  public static FamilySample of(String family, Collection<Double> values) {
    Refuse.unless(!values.isEmpty(), "%s has no plant.", family);
    double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double squares = values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
    return new FamilySample(family, values.size(), mean, squares);
  }

  /** All plants of all families. */
  static int plants(Collection<FamilySample> families) {
    return families.stream().mapToInt(FamilySample::plants).sum();
  }

  /** Squares within families. */
  static double within(Collection<FamilySample> families) {
    return families.stream().mapToDouble(FamilySample::squares).sum();
  }

  /** Why nothing can be said of the variance between these families; empty if it can. */
  static String lack(Collection<FamilySample> families) {
    Refuse.unless(
        families.stream().map(FamilySample::family).distinct().count() == families.size(),
        "One family stands there twice.");
    if (families.size() < 2) {
      return "A variance between families needs at least two of them.";
    }
    if (plants(families) <= families.size()) {
      return "No family has two plants: nothing shows how plants of one family differ.";
    }
    double size =
        families.stream().mapToDouble(own -> own.plants() * own.mean() * own.mean()).sum();
    return within(families) > 1e-26 * size ? "" : "Plants of one family never differ.";
  }
}
