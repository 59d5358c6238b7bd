package trialwood.analysis.distinct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * How the spread within reference varieties goes with their mean in one year.
 *
 * @param means of the reference varieties, rising; equal means keep their order
 * @param spreads their ln(sd + 1), in the same order
 * @param trend the centred moving average of the spreads
 */
record SpreadTrend(List<Double> means, List<Double> spreads, List<Double> trend) {

  /**
   * @param window odd number of varieties averaged; fewer near the ends, as many on either side
   */
  static SpreadTrend of(Collection<VarietyYear> references, int window) {
    List<VarietyYear> ranked =
        references.stream().sorted(Comparator.comparingDouble(VarietyYear::mean)).toList();
    List<Double> spreads = ranked.stream().map(VarietyYear::logSpread).toList();
    var trend = new ArrayList<Double>();
    for (int i = 0; i < spreads.size(); i++) {
      int reach = Math.min(window / 2, Math.min(i, spreads.size() - 1 - i));
      trend.add(average(spreads.subList(i - reach, i + reach + 1)));
    }
    return new SpreadTrend(
        ranked.stream().map(VarietyYear::mean).toList(), spreads, List.copyOf(trend));
  }

  /** A variety's ln(sd + 1) less the trend at its mean plus the mean of the references. */
  double adjusted(VarietyYear line) {
    return line.logSpread() - at(line.mean()) + average(spreads);
  }

  double meanAdjusted() {
    return average(spreads) - average(trend) + average(spreads);
  }

  /** Squares of the references' adjusted values about their mean. */
  double squares() {
    double level = meanAdjusted() - average(spreads);
    double squares = 0;
    for (int i = 0; i < spreads.size(); i++) {
      double off = spreads.get(i) - trend.get(i) - level;
      squares += off * off;
    }
    return squares;
  }

  /** The trend on the line between the two neighbouring references, flat beyond the ends. */
  private double at(double mean) {
    int above = 0;
    while (above < means.size() && means.get(above) < mean) {
      above++;
    }
    if (above == 0 || above == means.size()) {
      return trend.get(above == 0 ? 0 : above - 1);
    }
    double from = means.get(above - 1);
    double share = (mean - from) / (means.get(above) - from);
    return trend.get(above - 1) + share * (trend.get(above) - trend.get(above - 1));
  }

  private static double average(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
