package trialwood.evidence;

import java.time.LocalDate;
import trialwood.people.Role;

/**
 * Work of one sort, as a stage names it.
 *
 * @param key as it stands in an address, {@code tray-looks}
 * @param label as people read it above several, {@code Looks at trays}
 * @param who usually does it
 * @param grace days after it was due in which it can still be made good; later it was missed
 */
public record WorkKind(String key, String label, Role who, int grace) {

  /** The grace of work that stays to be done until somebody does it. */
  public static final int FOR_GOOD = Integer.MAX_VALUE;

  /**
   * Work of this kind that waits for its day; the methods of {@link DueWork} say more of it.
   *
   * @param place where it is done: a bench, a yard, a site
   * @param due the last day on which it is in time
   * @param what the work, in the imperative
   * @param why the record that asks for it
   * @param href page on which it is recorded, from the root of the application
   */
  public DueWork at(String place, LocalDate due, String what, String why, String href) {
    return new DueWork(this, place, due, due, what, why, href, href, null, null);
  }
}
