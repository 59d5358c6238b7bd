package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Variance components, adjusted and shrunken means: 06 and 13. */
final class Mixed implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
