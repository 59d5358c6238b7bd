package trialwood.observation;

import java.util.Locale;

/** Why there is no value. Blank means "not yet asked"; none of these is a zero. */
public enum NoneBecause {
  NOT_LOOKED_AT,
  DEAD,
  MISSING_PLANT,
  NOT_YET_FLOWERING,
  VOID;

  /** As words on a page and in a file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
