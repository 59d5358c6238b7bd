package trialwood.analysis.distinct;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the spread within reference varieties goes with their mean in one year.
 *
 * @param ranked the reference varieties by their means; equal means keep their order
 * @param trend the centred moving average of their ln(sd + 1), in the same order
 */
record SpreadTrend(List<VarietyYear> ranked, List<Double> trend) {

  /**
   * @param window odd number of varieties averaged; fewer near the ends, as many on either side
   */
  static SpreadTrend of(Collection<VarietyYear> references, int window) {
    List<VarietyYear> ranked =
        references.stream().sorted(Comparator.comparingDouble(VarietyYear::mean)).toList();
    var trend = new ArrayList<Double>();
    for (int i = 0; i < ranked.size(); i++) {
      int reach = Math.min(window / 2, Math.min(i, ranked.size() - 1 - i));
      trend.add(spread(ranked.subList(i - reach, i + reach + 1)));
    }
    return new SpreadTrend(ranked, List.copyOf(trend));
  }

  /** A variety beside the references, its trend read at its mean. */
  AdjustedSpread adjusted(VarietyYear line) {
    return adjusted(line, at(line.mean()));
  }

  /** The references themselves. */
  List<AdjustedSpread> adjusted() {
    return IntStream.range(0, ranked.size())
        .mapToObj(i -> adjusted(ranked.get(i), trend.get(i)))
        .toList();
  }

  /** Squares of the references' adjusted values about their mean. */
  double squares() {
    double[] values = adjusted().stream().mapToDouble(AdjustedSpread::value).toArray();
    double mean = Arrays.stream(values).average().orElseThrow();
    return Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
  }

  private AdjustedSpread adjusted(VarietyYear line, double trendThere) {
    return new AdjustedSpread(
        line.variety(), line.year(), line.logSpread() - trendThere + spread(ranked));
  }

  /** The trend on the line between the two neighbouring references, flat beyond the ends. */
  private double at(double mean) {
    int above = 0;
    while (above < ranked.size() && ranked.get(above).mean() < mean) {
      above++;
    }
    if (above == 0 || above == ranked.size()) {
      return trend.get(above == 0 ? 0 : above - 1);
    }
    double from = ranked.get(above - 1).mean();
    double share = (mean - from) / (ranked.get(above).mean() - from);
    return trend.get(above - 1) + share * (trend.get(above) - trend.get(above - 1));
  }

  private static double spread(List<VarietyYear> lines) {
    return lines.stream().mapToDouble(VarietyYear::logSpread).average().orElseThrow();
  }
}
