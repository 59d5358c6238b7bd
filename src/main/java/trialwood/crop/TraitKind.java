package trialwood.crop;

/** What a value of a trait is. */
public enum TraitKind {
  /** A length, a weight, a share: a number with a unit. */
  MEASUREMENT,
  /** A step of an ordered scale on which every step is described. */
  SCORE,
  /** A whole number of things. */
  COUNT,
  /** A calendar day. */
  DATE,
  /** A colour chart code with its edition. */
  COLOUR,
  /** Words. */
  TEXT;

  /** As a word in a sentence. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether values are numbers that can be averaged. */
  public boolean isNumber() {
    return this == MEASUREMENT || this == SCORE || this == COUNT;
  }
}
