package trialwood.propagation;

/** What is to be done at a tray; the word is also the last part of the form's address. */
public enum BenchTask {
  LOOK("look", "Look"),
  FINAL_COUNT("final-count", "Final count"),
  WEANING("weaning", "Weaning");

  private final String form;
  private final String word;

  BenchTask(String form, String word) {
    this.form = form;
    this.word = word;
  }

  public String form() {
    return form;
  }

  public String word() {
    return word;
  }
}
