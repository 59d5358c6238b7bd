package trialwood.analysis.rate;

import trialwood.analysis.Refuse;

/**
 * One tray's count.
 *
 * @param rooted cuttings rooted (or alive, or saleable: whatever is asked), 0 to {@code stuck}
 * @param stuck cuttings stuck, 1 to {@value #LARGEST}
 */
public record TrayCount(int rooted, int stuck) {

  private static final int LARGEST = 100_000;

  public TrayCount {
    Refuse.unless(stuck > 0, "A tray counts from at least one cutting stuck, not %d.", stuck);
    Refuse.unless(stuck <= LARGEST, "No tray holds %d cuttings.", stuck);
    Refuse.unless(rooted >= 0, "The number rooted cannot be negative: %d.", rooted);
    Refuse.unless(rooted <= stuck, "%d rooted of %d stuck is impossible.", rooted, stuck);
  }

  /** Rooted ÷ stuck. */
  public double share() {
    return (double) rooted / stuck;
  }
}
