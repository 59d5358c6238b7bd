package trialwood.dossier;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The time that one disclosure leaves for an application on one route. A period of n years ends on
 * the same calendar day n years later, 29 February on the 28th; the last day counts. No weekend or
 * holiday is rolled over: that is left to a practitioner.
 *
 * @param last last day of filing by the shorter period, which holds unless a person confirms that
 *     the office takes a shrub for a tree
 * @param lastIfTree last day of filing if it does; the same day where the route makes no difference
 */
public record NoveltyClock(LocalDate startedOn, LocalDate last, LocalDate lastIfTree) {

  /**
   * @param atHome whether the disclosure was made in the authority's own territory
   */
  public static NoveltyClock started(LocalDate on, boolean atHome, Grace grace) {
    return atHome
        ? new NoveltyClock(on, on.plusYears(grace.homeYears()), on.plusYears(grace.homeYears()))
        : new NoveltyClock(
            on, on.plusYears(grace.elsewhereYears()), on.plusYears(grace.elsewhereYearsTree()));
  }

  /** Days from that day to the last; 0 on the last day, negative once it has passed. */
  public long daysLeft(LocalDate on) {
    return ChronoUnit.DAYS.between(on, last);
  }

  /** Whether a filing on that day is in time by the shorter period. */
  public boolean isMetBy(LocalDate filedOn) {
    return !filedOn.isAfter(last);
  }

  /** Whether the trees' period would run longer: a question for a person. */
  public boolean dependsOnTree() {
    return !last.equals(lastIfTree);
  }
}
