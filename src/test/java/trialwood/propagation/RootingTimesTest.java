package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Numbers by hand: on a look of one day the curve is the share rooted (Turnbull 1976). */
class RootingTimesTest {

  private static final LocalDate STUCK = LocalDate.of(2022, 6, 6);

  @Test
  void the_lifted_stand_for_the_living_and_the_dead_never_root() {
    RootingTimes times =
        RootingTimes.of(List.of(look("T1", 21, 5, 4, 12, 24)), List.of()).orElseThrow();

    assertThat(times.curve().rootedBy(21)).isCloseTo(0.4, within(1e-6));
    assertThat(times.half().reached()).isFalse();
    assertThat(times.halfInWords()).isEqualTo("not reached by day 21");
  }

  @Test
  void the_final_count_speaks_for_all_that_were_stuck() {
    RootingTimes times =
        RootingTimes.of(List.of(look("T1", 14, 5, 0, 24, 24)), List.of(counted("T1", 28, 18)))
            .orElseThrow();

    assertThat(times.curve().rootedBy(28)).isCloseTo(0.75, within(1e-6));
    assertThat(times.halfInWords()).isEqualTo("day 14 to 28");
  }

  @Test
  void what_was_taken_out_is_not_taken_for_dead() {
    RootingTimes times =
        RootingTimes.of(List.of(look("T1", 21, 5, 4, 20, 20)), List.of()).orElseThrow();

    assertThat(times.curve().rootedBy(21)).isCloseTo(0.8, within(1e-6));
  }

  @Test
  void three_trays_looked_at_often_carry_a_smooth_law_with_a_share_that_never_roots() {
    var looks = new ArrayList<LookSample>();
    var counts = new ArrayList<TrayOutcome>();
    int[][] rooted = {{0, 1, 3, 4}, {0, 2, 3, 5}, {0, 1, 2, 4}};
    for (int t = 0; t < 3; t++) {
      for (int d = 0; d < 4; d++) {
        looks.add(look("T" + t, new int[] {14, 18, 21, 24}[d], 5, rooted[t][d], 24, 24));
      }
      counts.add(counted("T" + t, 31, 19 + t));
    }

    RootingTimes.Smooth law =
        RootingTimes.of(looks, counts).orElseThrow().smooth().value().orElseThrow();

    assertThat(law.half()).isBetween(18.0, 21.0);
    assertThat(law.never()).isBetween(0.05, 0.25);
    assertThat(law.halfByTrays().value().orElseThrow().interval().low()).isLessThan(law.half());
  }

  @Test
  void a_single_look_carries_no_law_and_says_so() {
    RootingTimes times =
        RootingTimes.of(List.of(look("T1", 21, 5, 4, 24, 24)), List.of()).orElseThrow();

    assertThat(times.smooth().lack()).isPresent();
    assertThat(RootingTimes.of(List.of(), List.of(counted("T1", 28, 20)))).isEmpty();
  }

  private static LookSample look(
      String tray, int day, int lifted, int rooted, int alive, int inTray) {
    return new LookSample(
        "R22",
        STUCK,
        new UUID(0, 1),
        tray,
        STUCK.plusDays(day),
        STUCK,
        lifted,
        rooted,
        alive,
        inTray);
  }

  private static TrayOutcome counted(String tray, int day, int rooted) {
    return new TrayOutcome(
        new UUID(0, 2),
        "R22",
        STUCK,
        85,
        new UUID(0, 1),
        false,
        new UUID(0, 3),
        tray,
        STUCK,
        STUCK.plusDays(day),
        24,
        rooted,
        rooted,
        null,
        null,
        null);
  }
}
