package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** Selection and pedigree: 09. */
final class Selection implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of();
  }
}
