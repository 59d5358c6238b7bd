package trialwood.gate;

import java.util.Locale;

/** What a criterion weighs: musts decide, preferences inform. */
public enum Need {
  MUST,
  PREFER;

  /** As words on a page. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
