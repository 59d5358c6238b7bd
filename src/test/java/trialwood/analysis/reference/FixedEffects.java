package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The fixed effects of a formula such as {@code ~0 + sex + block}, named as the files name them:
 * factor and level run together. Without an intercept the first factor has all its levels; every
 * other lacks its first.
 */
final class FixedEffects {

  private FixedEffects() {}

  /** For each line of the data its effects, each with its multiplier. */
  static List<Map<String, Double>> of(String formula, DataFile data) {
    var terms =
        new ArrayList<String>(List.of(formula.replace("~", "").replace(" ", "").split("\\+")));
    boolean intercept = !terms.remove("0");
    terms.remove("1");
    terms.remove("");
    var lines = new ArrayList<Map<String, Double>>();
    for (int i = 0; i < data.size(); i++) {
      lines.add(new LinkedHashMap<>());
      if (intercept) {
        lines.get(i).put("(Intercept)", 1.0);
      }
    }
    boolean whole = !intercept;
    for (String factor : terms) {
      List<String> levels = data.text(factor);
      String baseline = new TreeSet<>(levels).first();
      for (int i = 0; i < levels.size(); i++) {
        if (whole || !levels.get(i).equals(baseline)) {
          lines.get(i).put(factor + levels.get(i), 1.0);
        }
      }
      whole = false;
    }
    return lines;
  }
}
