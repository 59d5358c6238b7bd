package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Means in blocks and their comparisons: 05, 14 and the plain linear models of 06. */
final class Means implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
