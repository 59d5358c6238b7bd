package trialwood.analysis.trial;

import java.util.Comparator;
import trialwood.analysis.Refuse;

/**
 * One season at one site.
 *
 * @param site its name or code
 * @param season the calendar year
 */
public record SiteSeason(String site, int season) implements Comparable<SiteSeason> {

  private static final Comparator<SiteSeason> BY_SITE_THEN_SEASON =
      Comparator.comparing(SiteSeason::site).thenComparingInt(SiteSeason::season);

  public SiteSeason {
    Refuse.unless(!site.isBlank(), "A site needs a name.");
  }

  @Override
  public int compareTo(SiteSeason other) {
    return BY_SITE_THEN_SEASON.compare(this, other);
  }

  @Override
  public String toString() {
    return site + " " + season;
  }
}
