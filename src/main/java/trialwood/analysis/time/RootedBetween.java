package trialwood.analysis.time;

import trialwood.analysis.Refuse;

/**
 * Cuttings first seen rooted on one look and not yet on the look before: each rooted within (after,
 * by].
 *
 * @param after day of the last look without roots, 0 if the first look already showed them
 * @param by day of the look that showed roots; infinite for those never seen to root
 * @param cuttings how many, at least 1
 */
public record RootedBetween(double after, double by, int cuttings) {

  public RootedBetween {
    Refuse.unless(
        after >= 0 && Double.isFinite(after), "A look has a day from 0 on, not %s.", after);
    Refuse.unless(by > after, "Rooting after day %s and by day %s is impossible.", after, by);
    Refuse.unless(cuttings > 0, "A look counts at least one cutting, not %d.", cuttings);
  }

  /** Not rooted when last looked at; a cutting that died never roots. */
  public static RootedBetween notBy(double day, int cuttings) {
    return new RootedBetween(day, Double.POSITIVE_INFINITY, cuttings);
  }

  /** Whether roots were seen. */
  public boolean rooted() {
    return Double.isFinite(by);
  }
}
