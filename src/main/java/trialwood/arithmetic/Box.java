package trialwood.arithmetic;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.bench.Length;

/**
 * What a sum asks for.
 *
 * @param choices from the value in the address to the words on the tile; empty for a box to type in
 * @param usual what it holds when the page is opened
 */
record Box(
    String name, String label, @Nullable String hint, Map<String, String> choices, String usual) {

  static Box number(String name, String label, @Nullable String hint) {
    return new Box(name, label, hint, Map.of(), "");
  }

  Box usually(String value) {
    return new Box(name, label, hint, choices, value);
  }

  /** The unit that belongs to a strength. */
  static Box strengthUnit(String name, String of) {
    Map<String, String> units = new LinkedHashMap<>();
    units.put("ppm", "ppm");
    units.put("percent", "%");
    units.put("mgl", "mg/L");
    return new Box(name + Typing.UNIT, of + ", in", null, units, "ppm");
  }

  /** The unit that belongs to one or more lengths. */
  static Box lengthUnit(String label, Length usual) {
    Map<String, String> units = new LinkedHashMap<>();
    for (Length unit : Length.values()) {
      units.put(unit.sign(), unit.sign());
    }
    return new Box(Typing.LENGTH_UNIT, label, null, units, usual.sign());
  }

  public boolean isChoice() {
    return !choices.isEmpty();
  }
}
