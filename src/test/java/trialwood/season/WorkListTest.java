package trialwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkState;
import trialwood.people.Role;

class WorkListTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
  private static final WorkKind LOOKS = new WorkKind("looks", "Looks", Role.BENCH, 7);
  private static final WorkKind FILING = new WorkKind("filing", "Filing", Role.DOSSIER, 0);

  @Test
  void a_look_is_coming_then_due_then_overdue_and_after_a_week_it_was_missed() {
    DueWork look = look("B1", TODAY, "1");
    assertThat(look.state(TODAY.minusDays(1))).isEqualTo(WorkState.COMING);
    assertThat(look.state(TODAY)).isEqualTo(WorkState.DUE);
    assertThat(look.state(TODAY.plusDays(1))).isEqualTo(WorkState.OVERDUE);
    assertThat(look.state(TODAY.plusDays(7))).isEqualTo(WorkState.OVERDUE);
    assertThat(look.state(TODAY.plusDays(8))).isEqualTo(WorkState.MISSED);
  }

  @Test
  void a_month_to_count_in_is_due_from_its_first_day_to_its_last() {
    DueWork count = look("Y", LocalDate.of(2026, 6, 30), "1").from(LocalDate.of(2026, 6, 1));
    assertThat(count.state(LocalDate.of(2026, 6, 1))).isEqualTo(WorkState.DUE);
    assertThat(count.state(LocalDate.of(2026, 6, 30))).isEqualTo(WorkState.DUE);
    assertThat(task(count).hasTime()).isTrue();
  }

  @Test
  void what_is_kept_from_people_is_blocked_only_while_it_is_time_for_it() {
    DueWork look = look("B1", TODAY, "1").blockedBy("The house is closed.");
    assertThat(look.state(TODAY.minusDays(1))).isEqualTo(WorkState.COMING);
    assertThat(look.state(TODAY)).isEqualTo(WorkState.BLOCKED);
    assertThat(look.state(TODAY.plusDays(8))).isEqualTo(WorkState.MISSED);
  }

  @Test
  void places_stand_in_order_whatever_their_capitals_and_one_place_stands_once() {
    WorkList list =
        list(
            look("mist house", TODAY, "1"),
            look("Yard", TODAY, "2"),
            look("Bench 2", TODAY, "3"),
            look("bench 2", TODAY, "4"));
    assertThat(list.places())
        .extracting(PlaceList::place)
        .containsExactly("Bench 2", "mist house", "Yard");
    assertThat(list.placeNames()).containsExactly("Bench 2", "mist house", "Yard");
  }

  @Test
  void what_is_overdue_comes_first_at_its_place_the_oldest_ahead() {
    WorkList list =
        list(
            look("B1", TODAY, "due"),
            look("B1", TODAY.minusDays(2), "late"),
            look("B1", TODAY.minusDays(5), "later"));
    assertThat(list.tasks())
        .extracting(task -> task.work().what())
        .containsExactly("Look at later", "Look at late", "Look at due");
    assertThat(list.count(WorkState.OVERDUE)).isEqualTo(2);
  }

  @Test
  void many_of_one_kind_are_one_line_and_few_are_not() {
    WorkList three = list(look("B1", TODAY, "1"), look("B1", TODAY, "2"), look("B1", TODAY, "3"));
    WorkList four =
        list(
            look("B1", TODAY, "1"),
            look("B1", TODAY, "2"),
            look("B1", TODAY, "3"),
            look("B1", TODAY, "4"));
    assertThat(three.places().get(0).bundles()).singleElement().matches(Bundle::isFew);
    assertThat(four.places().get(0).bundles())
        .singleElement()
        .satisfies(
            bundle -> {
              assertThat(bundle.isFew()).isFalse();
              assertThat(bundle.size()).isEqualTo(4);
            });
  }

  @Test
  void missed_work_is_told_once_for_all_places() {
    WorkList list = list(look("B1", TODAY.minusDays(30), "1"), look("B2", TODAY.minusDays(9), "2"));
    assertThat(list.places()).isEmpty();
    assertThat(list.missed())
        .singleElement()
        .satisfies(
            missed -> {
              assertThat(missed.size()).isEqualTo(2);
              assertThat(missed.first()).isEqualTo(TODAY.minusDays(30));
            });
  }

  @Test
  void next_week_is_told_day_by_day() {
    WorkList list = list(look("B1", TODAY.plusDays(3), "1"), look("B1", TODAY.plusDays(1), "2"));
    assertThat(list.days())
        .extracting(DayList::day)
        .containsExactly(TODAY.plusDays(1), TODAY.plusDays(3));
  }

  @Test
  void the_address_says_which_part_is_shown() {
    WorkList list =
        list(
            look("Bench 2", TODAY, "1"),
            look("Yard", TODAY.minusDays(1), "2"),
            FILING.at("Desk", TODAY, "File A", "", "/"));
    assertThat(shown(list, Role.BREEDER, Map.of())).hasSize(3);
    assertThat(shown(list, Role.BENCH, Map.of())).hasSize(2);
    assertThat(shown(list, Role.BENCH, Map.of("who", "everyone"))).hasSize(3);
    assertThat(shown(list, Role.DOSSIER, Map.of())).hasSize(1);
    assertThat(shown(list, Role.BREEDER, Map.of("place", "bench 2"))).hasSize(1);
    assertThat(shown(list, Role.BREEDER, Map.of("kind", "looks"))).hasSize(2);
    assertThat(shown(list, Role.BREEDER, Map.of("state", "OVERDUE"))).hasSize(1);
    assertThat(shown(list, Role.BREEDER, Map.of("state", "nonsense"))).isEmpty();
    assertThat(WorkFilter.of(Map.of("days", "-4"), Role.BREEDER).days()).isZero();
    assertThat(WorkFilter.of(Map.of("days", "999999999"), Role.BREEDER).days()).isEqualTo(366);
  }

  private static List<Task> shown(WorkList list, Role role, Map<String, String> address) {
    return list.only(WorkFilter.of(address, role)).tasks();
  }

  private static WorkList list(DueWork... works) {
    return new WorkList(TODAY, List.of(works).stream().map(WorkListTest::task).toList());
  }

  private static Task task(DueWork work) {
    return new Task(work, work.state(TODAY), work.href());
  }

  private static DueWork look(String place, LocalDate due, String tray) {
    return LOOKS.at(place, due, "Look at " + tray, "day 7", "/bench/trays/" + tray + "/look");
  }
}
