package trialwood.container;

import java.util.Locale;

/** How plants left a lot. */
public enum Way {
  /** Destroyed on purpose. */
  DISPOSED,
  /** Given or sold, or planted in a trial. */
  TRANSFERRED,
  /** Moved into larger pots: another lot. */
  SHIFTED;

  /** As a word on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
