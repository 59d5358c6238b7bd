package trialwood.evidence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Work that the records ask for; {@link WorkKind#at} makes it.
 *
 * @param place where it is done: a bench, a yard, a site
 * @param from the first day on which it can be done
 * @param due the last day on which it is in time
 * @param what the work, in the imperative
 * @param why the record that asks for it
 * @param href page on which it is recorded, from the root of the application
 * @param readHref page for those who may look and not record
 * @param begun whether a part of it is done; null where that cannot be told
 * @param blockedBy what keeps people from it, a sentence; null where nothing does
 */
public record DueWork(
    WorkKind kind,
    String place,
    LocalDate from,
    LocalDate due,
    String what,
    String why,
    String href,
    String readHref,
    @Nullable Boolean begun,
    @Nullable String blockedBy) {

  /** It can be done from that day on. */
  public DueWork from(LocalDate first) {
    return new DueWork(kind, place, first, due, what, why, href, readHref, begun, blockedBy);
  }

  /** Those who may not record it look at this page. */
  public DueWork readAt(String page) {
    return new DueWork(kind, place, from, due, what, why, href, page, begun, blockedBy);
  }

  /** Whether a part of it is done. */
  public DueWork begun(boolean partly) {
    return new DueWork(kind, place, from, due, what, why, href, readHref, partly, blockedBy);
  }

  /** Nobody can do it now, for that reason. */
  public DueWork blockedBy(String reason) {
    return new DueWork(kind, place, from, due, what, why, href, readHref, begun, reason);
  }

  public WorkState state(LocalDate today) {
    if (today.isBefore(from)) {
      return WorkState.COMING;
    }
    if (ChronoUnit.DAYS.between(due, today) > kind.grace()) {
      return WorkState.MISSED;
    }
    if (blockedBy != null) {
      return WorkState.BLOCKED;
    }
    return today.isAfter(due) ? WorkState.OVERDUE : WorkState.DUE;
  }
}
