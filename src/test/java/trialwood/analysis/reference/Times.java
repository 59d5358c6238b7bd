package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Time to an event: 04. */
final class Times implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
