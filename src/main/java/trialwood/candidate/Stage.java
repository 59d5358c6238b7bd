package trialwood.candidate;

/** Where a candidate is on its way; each stage but the last ends at a gate. */
public enum Stage {
  FIELD("field"),
  PROPAGATION("propagation"),
  CONTAINER_1("container #1"),
  CONTAINER_2("container #3"),
  TRIAL("trial"),
  DOSSIER("dossier"),
  RELEASED("released");

  private final String word;

  Stage(String word) {
    this.word = word;
  }

  /** As words on a page. */
  public String word() {
    return word;
  }

  /** The stage behind this one's gate. */
  public Stage next() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }
}
