package trialwood.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.evidence.WorkState;
import trialwood.people.Role;
import trialwood.web.Doors;

class WorkListsTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
  private static final WorkKind LOOKS = new WorkKind("looks", "Looks", Role.BENCH, 7);

  private final Doors doors = mock(Doors.class);
  private final WorkLists lists = new WorkLists(List.of(new Bench(), new House()), doors);

  /** Two trays are due and one comes in ten days. */
  private static class Bench implements WorkSource {

    @Override
    public List<DueWork> due(LocalDate today) {
      return List.of(look("Mist house, bench 2", today, "1"), look("Tunnel", today, "2"));
    }

    @Override
    public List<DueWork> coming(LocalDate today, LocalDate until) {
      LocalDate day = today.plusDays(10);
      return day.isAfter(until) ? List.of() : List.of(look("Mist house", day, "3"));
    }
  }

  /** Asks for no work of its own; it knows that a house was sprayed. */
  private static class House implements WorkSource {

    @Override
    public List<DueWork> due(LocalDate today) {
      return List.of();
    }

    @Override
    public Map<String, String> closedPlaces(LocalDate today) {
      return Map.of("mist house", "closed until 14:00 after a spray");
    }
  }

  @BeforeEach
  void the_bench_may_write_and_the_reader_look_on() {
    when(doors.opens(Role.BENCH, "/bench/trays/1/look")).thenReturn(true);
    when(doors.opens(Role.READER, "/bench/trays/1")).thenReturn(true);
  }

  @Test
  void a_closed_house_blocks_what_others_ask_for_in_it() {
    List<Task> tasks = lists.on(TODAY, 0, Role.BENCH).tasks();
    assertThat(tasks).extracting(Task::state).containsExactly(WorkState.BLOCKED, WorkState.DUE);
    assertThat(tasks.get(0).work().blockedBy()).isEqualTo("closed until 14:00 after a spray");
  }

  @Test
  void what_comes_later_is_not_blocked_by_what_is_closed_today() {
    assertThat(lists.on(TODAY, 9, Role.BENCH).days()).isEmpty();
    assertThat(
            lists.on(TODAY, 10, Role.BENCH).only(task -> task.state() == WorkState.COMING).tasks())
        .singleElement()
        .satisfies(task -> assertThat(task.day()).isEqualTo(TODAY.plusDays(10)));
  }

  @Test
  void each_role_is_led_to_a_page_that_it_may_open_or_to_none() {
    assertThat(first(Role.BENCH).href()).isEqualTo("/bench/trays/1/look");
    assertThat(first(Role.READER).href()).isEqualTo("/bench/trays/1");
    assertThat(first(Role.DOSSIER).href()).isNull();
  }

  private Task first(Role role) {
    return lists.on(TODAY, 0, role).tasks().get(0);
  }

  private static DueWork look(String place, LocalDate due, String tray) {
    String page = "/bench/trays/" + tray;
    return LOOKS.at(place, due, "Look at " + tray, "day 7", page + "/look").readAt(page);
  }
}
