package trialwood.analysis.selection;

import trialwood.analysis.Refuse;

/**
 * How many seedlings of a family have what is asked for.
 *
 * @param family its name
 * @param hits 0 to {@code seedlings}
 * @param seedlings at least 1
 */
public record FamilyCount(String family, int hits, int seedlings) {

  public FamilyCount {
    Refuse.unless(seedlings > 0, "A family has at least one seedling, not %d.", seedlings);
    Refuse.unless(hits >= 0 && hits <= seedlings, "%d of %d is impossible.", hits, seedlings);
  }

  /** Hits ÷ seedlings. */
  public double share() {
    return (double) hits / seedlings;
  }
}
