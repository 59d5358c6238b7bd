package trialwood.analysis.time;

import java.util.List;
import java.util.TreeMap;
import trialwood.analysis.Refuse;

/**
 * The day by which a wanted share of the cuttings had rooted, as far as looks on a few days can
 * tell: an interval (last look before, first look that reached the share].
 *
 * <p>Looks of one day are pooled over trays: Σ rooted ÷ Σ lifted. A look is a sample, so a later
 * look may show less than an earlier one; the first that reached the share counts.
 *
 * <p>Source: Turnbull, B. W. (1976) The empirical distribution function with arbitrarily grouped,
 * censored and truncated data. Journal of the Royal Statistical Society B 38, 290–295: why the
 * truth is only known to lie between two looks
 */
public sealed interface RootingTime {

  /**
   * Reached after day {@code after} and by day {@code by}; {@code after} is 0, the day of sticking,
   * if the first look already showed the share.
   */
  record Reached(int after, int by) implements RootingTime {}

  /** Not reached by the last look, on day {@code lastDay}. */
  record NotReached(int lastDay) implements RootingTime {}

  /** Nobody has looked. */
  record NoLooks() implements RootingTime {}

  /** The time to one half rooted. */
  static RootingTime ofHalf(List<RootingLook> looks) {
    return of(looks, 0.5);
  }

  /**
   * The time to the given share.
   *
   * @param looks in any order
   * @param share wanted, 0 &lt; share ≤ 1
   * @throws IllegalArgumentException if the share is outside (0, 1]
   */
  static RootingTime of(List<RootingLook> looks, double share) {
    Refuse.unless(
        share > 0 && share <= 1,
        "The wanted share must lie above 0 and up to 1, not be %s.",
        share);
    if (looks.isEmpty()) {
      return new NoLooks();
    }
    var days = new TreeMap<Integer, RootingLook>();
    for (RootingLook look : looks) {
      days.merge(look.day(), look, RootingTime::pooled);
    }
    int after = 0;
    for (RootingLook look : days.values()) {
      if (look.share() >= share) {
        return new Reached(after, look.day());
      }
      after = look.day();
    }
    return new NotReached(after);
  }

  private static RootingLook pooled(RootingLook one, RootingLook other) {
    return new RootingLook(one.day(), one.lifted() + other.lifted(), one.rooted() + other.rooted());
  }
}
