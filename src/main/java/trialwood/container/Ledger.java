package trialwood.container;

/** What became of the plants of a lot, by the records: whatever is not told of is alive. */
public record Ledger(int potted, long lost, long disposed, long transferred, long shifted) {

  public long alive() {
    return potted - lost - disposed - transferred - shifted;
  }

  /** Plants that no record accounts for when so many are found alive; below zero, too many are. */
  long missing(int found) {
    return alive() - found;
  }
}
