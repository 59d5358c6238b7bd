package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Every method the families know, with nothing fitted yet. */
final class Methods {

  private final Map<String, Function<Row, Object>> byName = new HashMap<>();

  Methods() {
    List<Family> families =
        List.of(
            new Counts(),
            new TrayCounts(),
            new Times(),
            new KnownTimes(),
            new Means(),
            new Quantiles(),
            new Mixed(),
            new Stability(),
            new Growth(),
            new Selection(),
            new BuildUp(),
            new Colours());
    for (Family family : families) {
      family
          .methods()
          .forEach(
              (name, method) -> assertThat(byName.put(name, method)).as(name + " twice").isNull());
    }
  }

  /** What we make of a row. */
  Object answer(Row row) {
    Function<Row, Object> method = byName.get(row.method());
    if (method == null) {
      throw new UnknownRow(row);
    }
    return method.apply(row);
  }
}
