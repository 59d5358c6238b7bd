package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubts;
import trialwood.unit.Units;

/** Trays that are split and put together: no cutting is lost, none is counted twice. */
@RecordTest
@Import(PropagationSlice.class)
class TrayMovesTest {

  static final LocalDate MOVED = Bench.STUCK.plusDays(14);

  @Autowired Bench bench;
  @Autowired TrayMoves moves;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired TrayOutcomes outcomes;
  @Autowired Trays trays;
  @Autowired Units units;
  @Autowired Doubts doubts;
  @Autowired BenchLists lists;

  UUID white;
  StickingRun run;
  Tray tray;

  @BeforeEach
  void stickATray() {
    run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    white = bench.accession("A18-04");
    tray = bench.tray(run, "22-A-1", white, 24);
  }

  @Test
  void a_split_tray_closes_on_what_is_left_and_every_cutting_counts_once() {
    Tray other = split("22-A-1B", 7);
    assertThatThrownBy(() -> close(tray, 20, 4))
        .hasMessageContaining("24 recorded, 17 in the tray");
    close(tray, 15, 2);
    close(other, 6, 1);

    assertThat(outcomes.of(Set.of(white), Bench.COUNTED))
        .extracting(TrayOutcome::tray, TrayOutcome::stuck, TrayOutcome::rooted)
        .containsExactlyInAnyOrder(tuple("22-A-1", 17, 15), tuple("22-A-1B", 7, 6));
    assertThat(lists.traysOf("R22").stream().mapToInt(TrayLine::stuck).sum()).isEqualTo(24);
  }

  @Test
  void a_look_before_the_split_may_see_more_than_are_left() {
    split("22-A-1B", 7);
    records.look(tray.unitId(), new NewLook(MOVED.minusDays(2), 5, 1, 23, 0, null), null);
    assertThatThrownBy(
            () -> records.look(tray.unitId(), new NewLook(MOVED, 5, 1, 23, 0, null), null))
        .hasMessageContaining("23 alive, but 17 in the tray");
  }

  @Test
  void trays_put_together_count_where_the_cuttings_are() {
    Tray other = sameBatch(24, 20);
    records.look(tray.unitId(), new NewLook(MOVED.minusDays(1), 5, 1, 12, 12, null), null);
    moves.bring(other.unitId(), tray.unitId(), MOVED, 10, null, null);
    close(tray, 20, 14);
    close(other, 8, 2);
    assertThat(outcomes.of(Set.of(white), Bench.COUNTED))
        .extracting(TrayOutcome::stuck)
        .containsExactlyInAnyOrder(34, 10);
  }

  @Test
  void cuttings_that_came_from_another_tray_raise_no_question() {
    Tray other = sameBatch(24, 20);
    records.look(tray.unitId(), new NewLook(MOVED.minusDays(1), 5, 1, 12, 11, null), null);
    moves.bring(other.unitId(), tray.unitId(), MOVED, 10, null, null);
    records.look(tray.unitId(), new NewLook(MOVED.plusDays(1), 5, 2, 22, 0, null), null);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray.unitId())).isEmpty();
    records.look(tray.unitId(), new NewLook(MOVED.plusDays(3), 5, 2, 23, 0, null), null);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray.unitId())).hasSize(1);
  }

  @Test
  void a_tray_that_gave_all_away_has_nothing_to_count() {
    Tray other = sameBatch(24, 4);
    records.look(tray.unitId(), new NewLook(MOVED.minusDays(1), 5, 1, 12, 12, null), null);
    moves.bring(other.unitId(), tray.unitId(), MOVED, null, null, null);
    closing.finalCount(
        other.unitId(), new NewFinalCount(Bench.COUNTED, 0, 0, 0, 0, null, null, null), null);
    close(tray, 20, 8);
    assertThat(outcomes.of(Set.of(white), Bench.COUNTED))
        .singleElement()
        .extracting(TrayOutcome::stuck)
        .isEqualTo(28);
  }

  @Test
  void more_than_are_there_cannot_be_moved() {
    records.look(tray.unitId(), new NewLook(MOVED, 5, 1, 20, 4, null), null);
    assertThatThrownBy(() -> split("22-A-1B", 21))
        .hasMessageContaining("21 to be moved, but only 20 are in the tray");
  }

  @Test
  void a_tray_of_another_accession_is_refused() {
    Tray stranger = bench.tray(run, "22-B-1", bench.accession("B18-01"), 2);
    assertThatThrownBy(() -> moves.bring(stranger.unitId(), tray.unitId(), MOVED, null, null, null))
        .hasMessageContaining("hold different accessions");
  }

  @Test
  void more_than_the_cells_take_is_refused() {
    Tray other = sameBatch(24, 20);
    assertThatThrownBy(() -> moves.bring(other.unitId(), tray.unitId(), MOVED, 1, null, null))
        .hasMessageContaining("25 would be in the tray, but it has 24 cells");
  }

  @Test
  void nothing_goes_out_of_a_closed_tray() {
    close(tray, 20, 4);
    assertThatThrownBy(() -> split("22-A-1B", 3))
        .hasMessageContaining("final count of 22-A-1 is in");
  }

  @Test
  void a_split_is_taken_back_as_long_as_nothing_was_recorded_since() {
    TrayPassage passage = moves.split(tray.unitId(), "22-A-1B", 24, MOVED, 7, null, null);
    moves.takeBack(Objects.requireNonNull(passage.id()), "wrong tray", MOVED, null);
    close(tray, 20, 4);
    assertThat(outcomes.of(Set.of(white), Bench.COUNTED))
        .singleElement()
        .extracting(TrayOutcome::stuck)
        .isEqualTo(24);
    assertThatThrownBy(
            () -> moves.takeBack(Objects.requireNonNull(passage.id()), "again", MOVED, null))
        .hasMessageContaining("taken back before");
  }

  @Test
  void what_was_looked_at_since_stays_where_it_is() {
    TrayPassage passage = moves.split(tray.unitId(), "22-A-1B", 24, MOVED, 7, null, null);
    records.look(tray.unitId(), new NewLook(MOVED.plusDays(1), 5, 1, 17, 0, null), null);
    bench.flush();
    assertThatThrownBy(
            () -> moves.takeBack(Objects.requireNonNull(passage.id()), "wrong", MOVED, null))
        .hasMessageContaining("recorded of these trays since");
  }

  private Tray split(String label, int number) {
    TrayPassage passage = moves.split(tray.unitId(), label, 24, MOVED, number, null, null);
    return trays.findById(passage.toTrayId()).orElseThrow();
  }

  private Tray sameBatch(int cells, int stuck) {
    return bench.another(run, tray, "22-A-2", white, cells, stuck);
  }

  private @Nullable FinalCount close(Tray closed, int rooted, int dead) {
    FinalCount count =
        closing.finalCount(
            closed.unitId(),
            new NewFinalCount(Bench.COUNTED, rooted, 0, dead, 0, null, null, null),
            null);
    bench.flush();
    return count;
  }
}
