package trialwood.lineage;

import java.util.Locale;

/** What a check is there for. */
public enum CheckRole {
  BENCH,
  MARKET,
  SUSCEPTIBLE,
  RESISTANT,
  HARDY;

  /** As people say it: bench, market, ... */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
