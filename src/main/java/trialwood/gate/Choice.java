package trialwood.gate;

import java.util.Locale;

/** What the records speak for, and what a person decides. */
public enum Choice {
  ADVANCE,
  HOLD,
  DISCARD;

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
