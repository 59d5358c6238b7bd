package trialwood.analysis.time;

import trialwood.analysis.Refuse;

/**
 * One plant whose day is known: the event's, or the last on which it was seen without.
 *
 * @param day 0 or above
 * @param happened false if the plant was lost from sight first
 */
public record KnownTime(double day, boolean happened) {

  public KnownTime {
    Refuse.unless(day >= 0 && Double.isFinite(day), "A day is counted from 0, not %s.", day);
  }
}
