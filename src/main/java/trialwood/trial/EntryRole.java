package trialwood.trial;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.CheckRole;

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

  /** The entry that serves as that check; the bench check stands in no trial, the market's does. */
  static EntryRole of(@Nullable CheckRole check) {
    return check == null || check == CheckRole.BENCH ? MARKET : valueOf(check.name());
  }

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT) + (isCheck() ? " check" : "");
  }
}
