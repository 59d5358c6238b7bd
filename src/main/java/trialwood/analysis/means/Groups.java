package trialwood.analysis.means;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Median;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import trialwood.analysis.Answer;

/** The values of plots by the levels of one factor. */
public final class Groups {

  private final SortedMap<String, PlotValues> plots;

  private Groups(SortedMap<String, PlotValues> plots) {
    this.plots = plots;
  }

  /**
   * A level in short.
   *
   * @param level its name
   * @param n values
   * @param missing plots without one
   * @param mean lacking without a value
   * @param sd standard deviation on n − 1; lacking for fewer than two values
   * @param median lacking without a value
   */
  public record Summary(
      String level,
      int n,
      int missing,
      Answer<Double> mean,
      Answer<Double> sd,
      Answer<Double> median) {}

  /**
   * @throws IllegalArgumentException if the plots have no such factor
   */
  public static Groups of(PlotValues plots, String factor) {
    var groups = new TreeMap<String, PlotValues>();
    for (String level : plots.levelsOf(factor)) {
      groups.computeIfAbsent(level, name -> plots.at(factor, name));
    }
    return new Groups(groups);
  }

  /** One line a level, in alphabetical order. */
  public List<Summary> summaries() {
    return plots.entrySet().stream()
        .map(group -> summary(group.getKey(), group.getValue()))
        .toList();
  }

  private static Summary summary(String level, PlotValues plots) {
    double[] values = plots.recorded().values();
    String none = "%s has no value.".formatted(level);
    return new Summary(
        level,
        values.length,
        plots.size() - values.length,
        values.length > 0 ? Answer.known(mean(values)) : Answer.lacking(none),
        values.length > 1
            ? Answer.known(StandardDeviation.of(values).getAsDouble())
            : Answer.lacking("%s needs two values for a spread.".formatted(level)),
        values.length > 0 ? Answer.known(median(values)) : Answer.lacking(none));
  }

  /** The recorded values of each level that has any. */
  List<double[]> values() {
    return plots.values().stream()
        .map(group -> group.recorded().values())
        .filter(values -> values.length > 0)
        .toList();
  }

  static double mean(double[] values) {
    double mean = Mean.of(values).getAsDouble();
    return mean + DoubleStream.of(values).map(value -> value - mean).sum() / values.length;
  }

  static double median(double[] values) {
    return Median.withDefaults().evaluate(values);
  }
}
