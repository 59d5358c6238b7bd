package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a tray comes up on the round; the look days are common practice, no source. */
class WatchedTrayTest {

  private static final LocalDate STUCK = LocalDate.of(2026, 11, 2);

  @ParameterizedTest(name = "day {0}, looked on day {1}: {2} {3}")
  @CsvSource(
      textBlock =
          """
          6,     , LOOK,        RESTING
          7,     , LOOK,        DUE
          8,     , LOOK,        MISSED
          10,   7, LOOK,        DUE
          11,   7, LOOK,        OVERDUE
          14,   7, LOOK,        OVERDUE
          15,   7, LOOK,        MISSED
          18,  18, LOOK,        DONE
          20,  18, LOOK,        RESTING
          28,  24, FINAL_COUNT, DUE
          28,  28, FINAL_COUNT, DONE
          34,  28, FINAL_COUNT, RESTING
          35,  28, FINAL_COUNT, DUE
          40,  24, FINAL_COUNT, OVERDUE
          """)
  void under_the_mist(int day, @Nullable Integer looked, BenchTask task, RoundTray.State state) {
    RoundTray tray = open(looked == null ? null : STUCK.plusDays(looked)).on(STUCK.plusDays(day));

    assertThat(tray.task()).isEqualTo(task);
    assertThat(tray.state()).isEqualTo(state);
  }

  /** Closed on day 28; the last mist a day later, once it is noted. */
  @ParameterizedTest(name = "day {0}, mist noted {1}, counted on day {2}: {3}")
  @CsvSource(
      textBlock =
          """
          28, false,   , DONE
          30, false,   , RESTING
          35, false,   , DUE
          36, false,   , OVERDUE
          36, true,  36, DONE
          42, true,  36, RESTING
          43, true,  36, DUE
          43, true,  43, DONE
          50, true,  43, RESTING
          """)
  void off_the_mist(int day, boolean noted, @Nullable Integer counted, RoundTray.State state) {
    RoundTray tray =
        closed(noted ? STUCK.plusDays(29) : null, counted == null ? null : STUCK.plusDays(counted))
            .on(STUCK.plusDays(day));

    assertThat(tray.task()).isEqualTo(BenchTask.WEANING);
    assertThat(tray.state()).isEqualTo(state);
  }

  @Test
  void a_void_tray_and_one_with_an_open_question_wait_for_a_person() {
    LocalDate due = STUCK.plusDays(7);
    UUID doubt = new UUID(0, 1);

    assertThat(tray("T", null, 0, null, null, null, "dropped", null, null).on(due))
        .returns(RoundTray.State.BLOCKED, RoundTray::state)
        .returns("void: dropped", RoundTray::blockedBy);
    assertThat(tray("T", null, 0, null, null, null, null, doubt, "Same tray?").on(due))
        .returns(RoundTray.State.BLOCKED, RoundTray::state)
        .returns("Same tray?", RoundTray::blockedBy);
    assertThat(tray("T", due, 2, due, null, null, null, doubt, "Two counts").on(due).state())
        .isEqualTo(RoundTray.State.BLOCKED);
  }

  @Test
  void the_way_leads_on_along_the_bench_and_comes_back_to_what_was_skipped() {
    LocalDate day = STUCK.plusDays(7);
    Round round =
        new Round(
            List.of(
                tray("A", null, 0, null, null, null, null, null, null).on(day),
                tray("B", day, 0, null, null, null, null, null, null).on(day),
                tray("C", null, 0, null, null, null, "dropped", null, null).on(day),
                tray("D", null, 0, null, null, null, null, null, null).on(day)));

    assertThat(round.first()).map(RoundTray::tray).contains("A");
    assertThat(round.after("A")).map(RoundTray::tray).contains("D");
    assertThat(round.after("D")).map(RoundTray::tray).contains("A");
    assertThat(round.before("D")).map(RoundTray::tray).contains("A");
    assertThat(round.before("A")).isEmpty();
    assertThat(round.placeOf("C")).contains(3);
    assertThat(round.waiting()).isEqualTo(2);
    assertThat(round.after("elsewhere")).map(RoundTray::tray).contains("A");
  }

  private static WatchedTray open(@Nullable LocalDate looked) {
    return tray("T", looked, 0, null, null, null, null, null, null);
  }

  private static WatchedTray closed(@Nullable LocalDate mist, @Nullable LocalDate weaned) {
    LocalDate closed = STUCK.plusDays(28);
    return tray("T", closed.minusDays(4), 1, closed, mist, weaned, null, null, null);
  }

  private static WatchedTray tray(
      String label,
      @Nullable LocalDate looked,
      int counts,
      @Nullable LocalDate closed,
      @Nullable LocalDate mist,
      @Nullable LocalDate weaned,
      @Nullable String voidReason,
      @Nullable UUID doubt,
      @Nullable String question) {
    return new WatchedTray(
        label,
        "R26",
        "bench 1",
        "1",
        "1",
        "A18-01",
        STUCK,
        "7 10 14 18 21 24 28",
        looked,
        counts,
        closed,
        mist,
        weaned,
        voidReason,
        doubt,
        question);
  }
}
