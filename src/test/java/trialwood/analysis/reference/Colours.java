package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Colour: 11. */
final class Colours implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
