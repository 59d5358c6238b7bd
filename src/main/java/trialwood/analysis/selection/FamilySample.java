package trialwood.analysis.selection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /**
   * Plants gathered by family, in the order in which the families first appear.
   *
   * @param families of each plant
   * @param values of each plant
   */
  public static List<FamilySample> gather(List<String> families, double[] values) {
    Refuse.unless(
        families.size() == values.length,
        "%d families but %d values.",
        families.size(),
        values.length);
    Map<String, List<Double>> byFamily = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      byFamily.computeIfAbsent(families.get(i), name -> new ArrayList<>()).add(values[i]);
    }
    return byFamily.entrySet().stream().map(own -> of(own.getKey(), own.getValue())).toList();
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
