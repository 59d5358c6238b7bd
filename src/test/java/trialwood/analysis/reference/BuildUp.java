package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Stock build-up: 10. */
final class BuildUp implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
