package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;
import trialwood.analysis.BinomialInterval;
import trialwood.analysis.Interval;

/** Proportions: 01, 02, 03 and 15. */
final class Rates implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of("wilson", row -> end(row, BinomialInterval::wilson));
  }

  private static Object end(Row row, IntervalMethod method) {
    Interval interval = method.of(row.whole("x"), row.whole("n"), row.number("conf"));
    return switch (row.quantity()) {
      case "lower" -> interval.low();
      case "upper" -> interval.high();
      default -> throw new UnknownRow(row);
    };
  }

  private interface IntervalMethod {
    Interval of(int hits, int n, double level);
  }
}
