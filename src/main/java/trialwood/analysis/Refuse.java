package trialwood.analysis;

import java.util.Locale;

/** Turns input that cannot be true away with a sentence a person can read. */
public final class Refuse {

  private Refuse() {}

  public static void unless(boolean holds, String sentence, Object... parts) {
    if (!holds) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, sentence, parts));
    }
  }

  public static void unlessFinite(double value, String what) {
    unless(Double.isFinite(value), "The %s must be a number, not %s.", what, value);
  }

  /** Refuses anything but 0 &lt; value &lt; 1. */
  public static void unlessInside(double value, String what) {
    unless(value > 0 && value < 1, "The %s must lie between 0 and 1, not be %s.", what, value);
  }
}
