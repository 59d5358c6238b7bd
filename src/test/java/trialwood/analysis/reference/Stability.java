package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Entry by environment: 07. */
final class Stability implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
