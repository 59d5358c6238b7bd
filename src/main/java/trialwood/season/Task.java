package trialwood.season;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkState;

/**
 * A piece of work as one role meets it on a day.
 *
 * @param href the page this role may open for it; null where it may open none
 */
public record Task(DueWork work, WorkState state, @Nullable String href) {

  /** When: since or by which day. */
  public LocalDate day() {
    return state == WorkState.COMING ? work.from() : work.due();
  }

  /** Whether the work has a window and is not late. */
  public boolean hasTime() {
    return state != WorkState.OVERDUE
        && state != WorkState.MISSED
        && work.due().isAfter(work.from());
  }

  /** Not begun, under way, or nothing where that cannot be told. */
  public @Nullable String progress() {
    if (work.begun() == null) {
      return null;
    }
    return work.begun() ? "under way" : "not begun";
  }
}
