package trialwood.analysis.selection;

import java.util.Map;
import trialwood.analysis.Refuse;

/**
 * One value measured on a plant.
 *
 * @param plant its name in the pedigree
 * @param fixed what else it depends on, each fixed effect with its multiplier: {@code {block 3: 1}}
 * @param value in the unit of the trait
 */
public record PlantRecord(String plant, Map<String, Double> fixed, double value) {

  public PlantRecord {
    Refuse.unlessFinite(value, "value of " + plant);
    fixed = Map.copyOf(fixed);
    fixed.forEach((name, multiplier) -> Refuse.unlessFinite(multiplier, name));
  }
}
