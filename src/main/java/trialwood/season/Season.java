package trialwood.season;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import trialwood.people.Role;

/** The season to come, written out as a calendar. */
@Service
public class Season {

  /** As far as the records can tell what is due. */
  private static final int DAYS_AHEAD = 90;

  private final WorkLists lists;
  private final Clock clock;
  private final String nursery;

  Season(WorkLists lists, Clock clock, @Value("${trialwood.nursery}") String nursery) {
    this.lists = lists;
    this.clock = clock;
    this.nursery = nursery;
  }

  /**
   * What an account of the role has to do, as text of the type {@code text/calendar}. It changes
   * with the day and with the work, not from one moment to the next.
   *
   * @param root address of the application, without a slash at its end
   */
  public String calendar(Role role, String root) {
    LocalDate today = LocalDate.now(clock);
    WorkList list = lists.on(today, DAYS_AHEAD, role).only(task -> WorkFilter.isUsual(task, role));
    return new WorkCalendar(
            "Trialwood, " + nursery, list, today.atStartOfDay(clock.getZone()).toInstant(), root)
        .text();
  }
}
