package trialwood.candidate;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

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

  /** As it stands in addresses and sheets: container-1. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The stage with that key. */
  public static Optional<Stage> of(String key) {
    return Arrays.stream(values()).filter(stage -> stage.key().equals(key)).findFirst();
  }

  /** The stage behind this one's gate. */
  public Stage next() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }
}
