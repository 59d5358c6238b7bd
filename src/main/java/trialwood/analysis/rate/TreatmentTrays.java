package trialwood.analysis.rate;

import java.util.List;
import trialwood.analysis.Refuse;

/**
 * The trays of one treatment, such as one strength of rooting hormone.
 *
 * @param treatment its name
 * @param trays at least one
 */
public record TreatmentTrays(String treatment, List<TrayCount> trays) {

  public TreatmentTrays {
    trays = List.copyOf(trays);
    Refuse.unless(!trays.isEmpty(), "No tray of %s has been counted.", treatment);
  }

  /** Rooted over all trays. */
  public long rooted() {
    return trays.stream().mapToLong(TrayCount::rooted).sum();
  }

  /** Stuck over all trays. */
  public long stuck() {
    return trays.stream().mapToLong(TrayCount::stuck).sum();
  }

  /** Rooted ÷ stuck over all trays. */
  public double share() {
    return (double) rooted() / stuck();
  }
}
