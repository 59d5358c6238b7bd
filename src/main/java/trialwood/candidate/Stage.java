package trialwood.candidate;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where a candidate is on its way; only a gate decision moves it. */
public enum Stage {
  FIELD,
  PROPAGATION,
  CONTAINER_1,
  CONTAINER_2,
  TRIAL,
  DOSSIER,
  RELEASED;

  /** As people say it: field, container 1, ... */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** As it stands in addresses and files: field, container-1, ... */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The stage with that key. */
  public static Optional<Stage> of(String key) {
    return Arrays.stream(values()).filter(stage -> stage.key().equals(key)).findFirst();
  }

  /**
   * The stage behind this one's gate.
   *
   * @throws IllegalStateException for a released candidate, which has arrived
   */
  public Stage next() {
    if (this == RELEASED) {
      throw new IllegalStateException("Nothing comes after the release.");
    }
    return values()[ordinal() + 1];
  }
}
