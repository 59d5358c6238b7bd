package trialwood.analysis.time;

import trialwood.analysis.Refuse;

/**
 * The days after sticking in which a crop is expected to root.
 *
 * @param from first day, at least 1
 * @param to last day, not before {@code from}
 */
public record RootingWindow(int from, int to) {

  /** Easy softwood cuttings under mist: 18 to 24 days (common practice, no source). */
  public static final RootingWindow EASY_SOFTWOOD = new RootingWindow(18, 24);

  /** Where a rooting time lies against the window. */
  public enum Timing {
    EARLIER,
    WITHIN,
    LATER,
    /** The looks cannot tell: nobody looked, too soon to say, or the interval crosses an edge. */
    OPEN
  }

  public RootingWindow {
    Refuse.unless(from > 0, "A rooting window starts at day 1 or later, not at %d.", from);
    Refuse.unless(from <= to, "A rooting window cannot run from day %d to day %d.", from, to);
  }

  /** The only timing that every day of the interval allows, or OPEN. */
  public Timing timingOf(RootingTime time) {
    if (time instanceof RootingTime.Reached reached) {
      if (reached.by() < from) {
        return Timing.EARLIER;
      }
      if (reached.after() >= to) {
        return Timing.LATER;
      }
      return reached.after() + 1 >= from && reached.by() <= to ? Timing.WITHIN : Timing.OPEN;
    }
    return time instanceof RootingTime.NotReached not && not.lastDay() >= to
        ? Timing.LATER
        : Timing.OPEN;
  }
}
