package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;

@RecordTest
@Import(PropagationSlice.class)
class TrayRecordsTest {

  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired FinalCounts counts;
  @Autowired Doubts doubts;

  UUID tray;

  @BeforeEach
  void stickATray() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    tray = bench.tray(run, "22-A-1", bench.accession("A18-04"), 24).unitId();
  }

  @Test
  void a_tray_whose_counts_do_not_add_up_is_refused() {
    assertThatThrownBy(() -> close(9, 4, 12, 0))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("25 recorded, 24 stuck");
    assertThat(counts.standing(tray)).isEmpty();
  }

  @Test
  void a_count_that_leaves_one_out_asks_what_became_of_it() {
    assertThatThrownBy(() -> close(9, 4, 10, 0))
        .hasMessageContaining("23 recorded, 24 stuck")
        .hasMessageContaining("1 lost or destroyed? Say which");
  }

  @Test
  void a_tray_that_adds_up_is_closed() {
    assertThat(close(9, 4, 11, 0).rootedOfStuck()).isEqualTo(9);
  }

  @Test
  void more_rooted_than_stuck_is_refused() {
    assertThatThrownBy(() -> close(26, 0, 0, 0)).hasMessageContaining("26 rooted, 24 stuck");
  }

  @Test
  void a_sample_with_more_rooted_than_lifted_is_refused() {
    assertThatThrownBy(() -> look(18, 5, 6, 24)).hasMessageContaining("6 rooted, but 5 lifted");
  }

  @Test
  void a_look_before_sticking_or_tomorrow_is_refused() {
    assertThatThrownBy(() -> look(-1, 5, 0, 24)).hasMessageContaining("stuck later");
    assertThatThrownBy(
            () ->
                records.look(
                    tray, new NewLook(LocalDate.now().plusDays(1), 5, 0, 24, 0, null), null))
        .hasMessageContaining("still to come");
  }

  @Test
  void more_alive_than_at_the_last_look_is_kept_and_asked_about() {
    look(14, 5, 1, 20);
    look(18, 5, 4, 23);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray))
        .singleElement()
        .extracting(Doubt::question)
        .asString()
        .contains("23 alive, but 20");
  }

  @Test
  void a_rooted_cutting_potted_early_counts_as_rooted() {
    records.takenOut(
        tray, new NewTakenOut(Bench.STUCK.plusDays(20), 2, true, TakenOut.Fate.POTTED, null), null);
    assertThat(close(20, 0, 2, 2).rootedOfStuck()).isEqualTo(22);
  }

  @Test
  void a_final_count_that_forgets_what_was_taken_out_is_refused() {
    records.takenOut(
        tray, new NewTakenOut(Bench.STUCK.plusDays(20), 2, true, TakenOut.Fate.POTTED, null), null);
    assertThatThrownBy(() -> close(22, 0, 2, 0)).hasMessageContaining("2 taken out are on record");
  }

  @Test
  void the_same_count_from_two_phones_is_kept_once() {
    close(21, 1, 2, 0);
    close(21, 1, 2, 0);
    assertThat(counts.standing(tray)).hasSize(1);
  }

  @Test
  void two_different_counts_are_both_kept_until_a_person_settles_on_one() {
    close(21, 1, 2, 0);
    close(22, 0, 2, 0);
    assertThat(counts.standing(tray)).hasSize(2);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).hasSize(1);

    closing.finalCount(
        tray,
        new NewFinalCount(Bench.COUNTED, 22, 0, 2, 0, null, null, "counted again together"),
        null);
    assertThat(counts.standing(tray)).singleElement().extracting(FinalCount::rooted).isEqualTo(22);
    assertThat(counts.findByTrayIdOrderByRecordedRecordedAt(tray)).hasSize(3);
  }

  @Test
  void only_rooted_cuttings_come_off_the_mist() {
    close(20, 2, 2, 0);
    assertThatThrownBy(() -> wean(7, 21)).hasMessageContaining("left 20 rooted");
    assertThat(wean(7, 19).daysOff()).isEqualTo(7);
  }

  @Test
  void more_alive_after_fourteen_days_than_after_seven_is_asked_about() {
    close(20, 2, 2, 0);
    wean(7, 18);
    wean(14, 19);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).hasSize(1);
  }

  @Test
  void a_tray_not_yet_counted_cannot_be_weaned() {
    assertThatThrownBy(() -> wean(7, 20)).hasMessageContaining("final count first");
  }

  private FinalCount close(int rooted, int alive, int dead, int takenOut) {
    return closing.finalCount(
        tray,
        new NewFinalCount(Bench.COUNTED, rooted, alive, dead, takenOut, null, null, null),
        null);
  }

  private void look(int day, int lifted, int rooted, int alive) {
    records.look(
        tray, new NewLook(Bench.STUCK.plusDays(day), lifted, rooted, alive, 0, null), null);
  }

  private Weaning wean(int daysOff, int alive) {
    return closing.weaning(
        tray,
        new NewWeaning(Bench.COUNTED, Bench.COUNTED.plusDays(daysOff), alive, null, null, null),
        null);
  }
}
