package trialwood.analysis.means;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import trialwood.analysis.Refuse;

/**
 * One value a plot, and what each plot is: its entry, its block, its site. Built up factor by
 * factor: {@code PlotValues.of(heights).by("entry", entries).by("block", blocks)}.
 */
public final class PlotValues {

  private final double[] values;
  private final double[] weights;
  private final Map<String, List<String>> factors;

  private PlotValues(double[] values, double[] weights, Map<String, List<String>> factors) {
    this.values = values;
    this.weights = weights;
    this.factors = factors;
  }

  /**
   * @param values in the unit of the trait; NaN where the value is missing
   * @throws IllegalArgumentException if a value is infinite
   */
  public static PlotValues of(double... values) {
    for (double value : values) {
      Refuse.unless(!Double.isInfinite(value), "A value must be a number, not %s.", value);
    }
    double[] weights = new double[values.length];
    Arrays.fill(weights, 1);
    return new PlotValues(values.clone(), weights, Map.of());
  }

  /**
   * With weights: the error variance of a value is inverse to its weight.
   *
   * @param weights one a plot, above 0; what they are does not matter where the value is missing
   * @throws IllegalArgumentException if there are more or fewer weights than values, or one of them
   *     is 0 or less, or no number
   */
  public PlotValues weighing(double... weights) {
    Refuse.unless(
        weights.length == values.length,
        "%d weights do not fit %d values.",
        weights.length,
        values.length);
    for (int i = 0; i < weights.length; i++) {
      boolean fits = Double.isNaN(values[i]) || weights[i] > 0 && Double.isFinite(weights[i]);
      Refuse.unless(fits, "A weight must be above 0, not %s.", weights[i]);
    }
    return new PlotValues(values, weights.clone(), factors);
  }

  /**
   * With one more factor.
   *
   * @param levels one a plot, in the order of the values
   * @throws IllegalArgumentException if there are more or fewer levels than values, one of them is
   *     blank, or the factor is there already
   */
  public PlotValues by(String factor, List<String> levels) {
    Refuse.unless(
        levels.size() == values.length,
        "%d levels of %s do not fit %d values.",
        levels.size(),
        factor,
        values.length);
    Refuse.unless(levels.stream().noneMatch(String::isBlank), "Every plot needs its %s.", factor);
    Refuse.unless(!factors.containsKey(factor), "%s is named twice.", factor);
    var more = new LinkedHashMap<>(factors);
    more.put(factor, List.copyOf(levels));
    return new PlotValues(values, weights, Collections.unmodifiableMap(more));
  }

  /** Number of plots, with or without a value. */
  public int size() {
    return values.length;
  }

  public double[] values() {
    return values.clone();
  }

  double[] weights() {
    return weights.clone();
  }

  /** The plots that have a value. */
  public PlotValues recorded() {
    return only(plot -> !Double.isNaN(values[plot]));
  }

  /** The plots at one level of a factor. */
  public PlotValues at(String factor, String level) {
    List<String> levels = levelsOf(factor);
    return only(plot -> levels.get(plot).equals(level));
  }

  /**
   * The level of every plot.
   *
   * @throws IllegalArgumentException if there is no such factor
   */
  public List<String> levelsOf(String factor) {
    List<String> levels = factors.get(factor);
    if (levels == null) {
      throw new IllegalArgumentException("The plots have no " + factor + ".");
    }
    return levels;
  }

  private PlotValues only(IntPredicate wanted) {
    int[] plots = IntStream.range(0, values.length).filter(wanted).toArray();
    var kept = new LinkedHashMap<String, List<String>>();
    factors.forEach(
        (name, levels) -> kept.put(name, Arrays.stream(plots).mapToObj(levels::get).toList()));
    return new PlotValues(
        Arrays.stream(plots).mapToDouble(plot -> values[plot]).toArray(),
        Arrays.stream(plots).mapToDouble(plot -> weights[plot]).toArray(),
        Collections.unmodifiableMap(kept));
  }
}
