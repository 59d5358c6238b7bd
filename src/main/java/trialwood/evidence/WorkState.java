package trialwood.evidence;

/** How it stands with a piece of work on a day, in the order in which people want to hear of it. */
public enum WorkState {
  /** It should have been done by now and still can be. */
  OVERDUE("overdue"),
  /** Its day or its window is here. */
  DUE("due"),
  /** It is time, and something keeps people from it. */
  BLOCKED("blocked"),
  /** Its day is still to come. */
  COMING("coming up"),
  /** Its time went by; what it would have shown cannot be seen any more. */
  MISSED("missed");

  private final String word;

  WorkState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
