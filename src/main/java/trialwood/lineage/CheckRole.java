package trialwood.lineage;

import java.util.Locale;

/** What a check cultivar is there for. */
public enum CheckRole {
  /** An easy, never-changing clone in every sticking run. */
  BENCH,
  /** What a customer would buy instead. */
  MARKET,
  /** Proves that there was disease pressure. */
  SUSCEPTIBLE,
  /** Stays clean under pressure. */
  RESISTANT,
  /** Stands the winter. */
  HARDY;

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT) + " check";
  }
}
