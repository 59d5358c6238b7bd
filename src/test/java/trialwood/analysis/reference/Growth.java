package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Growth and disease over time: 08. */
final class Growth implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
