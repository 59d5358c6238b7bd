package trialwood.candidate;

import java.util.Locale;

/** Whether a candidate is going on. */
public enum Standing {
  ACTIVE,
  ON_HOLD,
  DISCARDED,
  RELEASED;

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
