package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.record.Problem;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.web.Questions;

/** What is asked about on a page before it is stored; the limits are common practice, no source. */
@RecordTest
@Import(PropagationSlice.class)
class TrayQuestionsTest {

  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired Sticking sticking;
  @Autowired Doubts doubts;

  private List<UUID> trays;

  @BeforeEach
  void three_trays_of_one_batch() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    UUID clone = bench.accession("A18-04");
    Batch batch =
        sticking.batch(
            new Batch(Objects.requireNonNull(run.id()), "B-A", Batch.Source.ORTET, null, null));
    trays =
        List.of("22-A-1", "22-A-2", "22-A-3").stream()
            .map(
                label ->
                    sticking
                        .tray(
                            run,
                            batch,
                            new NewTray(label, clone, 24, run.fromDate(), 24, "1", null, null))
                        .unitId())
            .toList();
    bench.flush();
  }

  /** Sends a form; once asked, again with the questions that it came back with. */
  private static void sent(@Nullable String checked, Consumer<Questions> form) {
    try {
      form.accept(new Questions(null, null));
    } catch (Refused refused) {
      if (checked == null || !isQuestion(refused)) {
        throw refused;
      }
      form.accept(new Questions(refused.getMessage(), checked));
    }
  }

  private static boolean isQuestion(Throwable refused) {
    return refused instanceof Refused
        && ((Refused) refused).problems().stream().map(Problem::field).anyMatch("checked"::equals);
  }

  private void look(int day, int lifted, int alive, int dead, @Nullable String checked) {
    NewLook look = new NewLook(Bench.STUCK.plusDays(day), lifted, 0, alive, dead, null);
    sent(checked, asked -> records.look(trays.get(0), look, null, asked));
    bench.flush();
  }

  private void count(int tray, int day, int rooted, @Nullable String checked) {
    NewFinalCount count = Bench.closing(Bench.STUCK.plusDays(day), rooted);
    sent(checked, asked -> closing.finalCount(trays.get(tray), count, null, asked));
    bench.flush();
  }

  @Test
  void five_of_24_are_a_fifth_and_six_are_asked_about() {
    look(7, 5, 24, 0, null);
    assertThatThrownBy(() -> look(10, 6, 24, 0, null))
        .matches(TrayQuestionsTest::isQuestion)
        .hasMessageContaining("6 of 24 lifted is more than a fifth");
  }

  @Test
  void a_week_without_a_look_is_asked_about_while_cuttings_are_young() {
    assertThatThrownBy(() -> look(8, 5, 24, 0, null))
        .hasMessageContaining("Nobody looked for 8 days");
    look(8, 5, 24, 0, "the pump was down");
    look(29, 5, 24, 0, null);
    assertThat(doubts.findByUnitIdOrderByOnDate(trays.get(0)))
        .singleElement()
        .returns("the pump was down", Doubt::answer);
  }

  @Test
  void more_alive_than_at_the_look_before_is_asked_about() {
    look(7, 5, 20, 0, null);
    assertThatThrownBy(() -> look(10, 5, 23, 0, null))
        .matches(TrayQuestionsTest::isQuestion)
        .hasMessageContaining("23 alive, but 20");
  }

  @Test
  void what_left_the_tray_before_is_not_alive_in_it() {
    look(7, 5, 22, 2, null);
    records.takenOut(
        trays.get(0),
        new NewTakenOut(Bench.STUCK.plusDays(8), 1, false, TakenOut.Fate.SAMPLED, null),
        null);
    bench.flush();
    assertThatThrownBy(() -> look(10, 5, 22, 0, null))
        .matches(refused -> !isQuestion(refused))
        .hasMessageContaining("3 of the 24 stuck left the tray before");
    look(10, 5, 21, 0, null);
  }

  @ParameterizedTest(name = "day {0}: {1}")
  @CsvSource({"13, early", "91, late"})
  void a_final_count_on_a_strange_day_is_asked_about(int day, String word) {
    assertThatThrownBy(() -> count(0, day, 20, null))
        .matches(TrayQuestionsTest::isQuestion)
        .hasMessageContaining("Day %d after sticking is %s".formatted(day, word));
  }

  @ParameterizedTest(name = "{0} of 24 in every tray")
  @CsvSource({"24, Every cutting of the batch rooted", "0, Not one cutting of the batch rooted"})
  void all_or_nothing_in_every_tray_is_asked_about_at_the_last(int rooted, String question) {
    count(0, 28, rooted, null);
    count(1, 28, rooted, null);
    assertThatThrownBy(() -> count(2, 28, rooted, null)).hasMessageContaining(question);
    count(2, 28, rooted, "looked at each");
  }

  @Test
  void trays_more_than_30_points_apart_are_asked_about_and_a_void_one_is_left_out() {
    count(0, 28, 23, null);
    count(1, 28, 16, null);
    assertThatThrownBy(() -> count(2, 28, 9, null)).hasMessageContaining("rooted 38 to 96 %");
    count(2, 28, 9, "the nozzle above it is clogged");
    records.rule(trays.get(2), Bench.STUCK.plusDays(29), false, "clogged nozzle", null);
    bench.flush();
    closing.finalCount(
        trays.get(1),
        new NewFinalCount(Bench.COUNTED, 17, 0, 7, 0, null, null, "counted again"),
        null,
        new Questions(null, null));
  }

  @Test
  void a_last_mist_before_the_final_count_is_asked_about_and_before_sticking_refused() {
    count(0, 28, 20, null);
    assertThatThrownBy(() -> weaned(20))
        .matches(TrayQuestionsTest::isQuestion)
        .hasMessageContaining("the mist");
    assertThatThrownBy(() -> weaned(-1))
        .matches(refused -> !isQuestion(refused))
        .hasMessageContaining("stuck later");
  }

  private void weaned(int mist) {
    closing.weaning(
        trays.get(0),
        new NewWeaning(Bench.STUCK.plusDays(mist), Bench.STUCK.plusDays(35), 19, null, null, null),
        null,
        new Questions(null, null));
  }
}
