package trialwood.propagation;

/** Whose experience says how alike the cuttings of one tray are. */
public enum LikenessPrior {
  USUAL("the usual one"),
  OWN("the nursery’s own");

  private final String word;

  LikenessPrior(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
