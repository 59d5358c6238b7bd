package trialwood.gate;

import java.util.Locale;

/** What a criterion answers. */
public enum Verdict {
  MEETS,
  /** The discard rule holds. */
  FALLS_SHORT,
  /** Neither rule holds, or there is too little evidence. */
  NOT_SETTLED,
  NO_RECORD;

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
