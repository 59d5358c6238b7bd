package trialwood.analysis;

/**
 * One tray's count.
 *
 * @param rooted cuttings rooted (or alive, or saleable: whatever is asked), 0 to {@code stuck}
 * @param stuck cuttings stuck, at least 1
 */
public record TrayCount(int rooted, int stuck) {

  public TrayCount {
    Refuse.unless(stuck > 0, "A tray counts from at least one cutting stuck, not %d.", stuck);
    Refuse.unless(rooted >= 0, "The number rooted cannot be negative: %d.", rooted);
    Refuse.unless(rooted <= stuck, "%d rooted of %d stuck is impossible.", rooted, stuck);
  }

  /** Rooted ÷ stuck. */
  public double share() {
    return (double) rooted / stuck;
  }
}
