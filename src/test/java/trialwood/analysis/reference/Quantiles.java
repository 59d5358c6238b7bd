package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Quantiles of distributions: 12. */
final class Quantiles implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
