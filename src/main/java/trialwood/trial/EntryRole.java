package trialwood.trial;

import java.util.Locale;

/** What an entry stands in a trial for. */
public enum EntryRole {
  CANDIDATE,
  /** What a customer would buy instead. */
  MARKET,
  /** Proves that there was disease pressure. */
  SUSCEPTIBLE,
  /** Stays clean under pressure. */
  RESISTANT,
  /** Stands the winter. */
  HARDY;

  public boolean isCheck() {
    return this != CANDIDATE;
  }

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT) + (isCheck() ? " check" : "");
  }
}
