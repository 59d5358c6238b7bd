package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trialwood.container.Nursery.AUTUMN;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;

@ContainerTest
class LotRecordsTest {

  private static final LocalDate SPRING = LocalDate.of(2023, 4, 12);

  @Autowired Nursery nursery;
  @Autowired LotRecords records;
  @Autowired Lots lots;
  @Autowired LotCounts counts;
  @Autowired LotLosses losses;
  @Autowired Doubts doubts;

  private UUID lot;

  @BeforeEach
  void twenty_pots() {
    lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
  }

  private void counted(LocalDate on, int alive) {
    records.count(lot, new NewCount(on, alive, null, null, null));
  }

  private void lost(int number) {
    records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), number, "roots brown", null));
  }

  @Test
  void a_count_that_agrees_with_the_ledger_raises_no_question() {
    lost(1);
    counted(AUTUMN, 19);

    assertThat(doubts.findByUnitIdOrderByOnDate(lot)).isEmpty();
  }

  @Test
  void two_counts_of_one_day_that_differ_are_both_kept_and_asked_about() {
    lost(1);
    counted(AUTUMN, 19);
    counted(AUTUMN, 19);
    assertThat(doubts.findByUnitIdOrderByOnDate(lot)).isEmpty();
    counted(AUTUMN, 18);

    assertThat(counts.findByLotIdOrderByOnDate(lot)).hasSize(3);
    assertThat(doubts.findByUnitIdOrderByOnDate(lot))
        .extracting(Doubt::question)
        .anyMatch(question -> question.startsWith("Two counts of one day: 19 alive and 18 alive."));
  }

  @Test
  void losses_found_with_a_count_close_its_gap() {
    assertThat(records.questions(lot, new NewCount(AUTUMN, 17, null, null, null), 3)).isEmpty();
    assertThat(records.questions(lot, new NewCount(AUTUMN, 17, null, null, null), 2)).hasSize(1);
  }

  @Test
  void plants_missing_without_a_record_are_asked_about() {
    lost(1);
    counted(AUTUMN, 17);

    assertThat(doubts.findByUnitIdOrderByOnDate(lot))
        .extracting(Doubt::question)
        .containsExactly(
            "17 alive, but the records leave 19 of 20 potted"
                + " (1 lost, 0 disposed of, 0 given away, 0 shifted).");
    assertThat(counts.findByLotIdOrderByOnDate(lot)).hasSize(1);
  }

  @Test
  void more_alive_than_at_the_last_count_is_kept_and_asked_about() {
    lost(3);
    counted(AUTUMN, 17);
    counted(SPRING, 19);

    assertThat(doubts.findByUnitIdOrderByOnDate(lot))
        .extracting(Doubt::question)
        .anyMatch(
            question -> question.startsWith("19 alive, 17 at the count of 12\u00a0Oct\u00a02022"));
    assertThat(counts.findByLotIdOrderByOnDate(lot)).hasSize(2);
  }

  @Test
  void more_lost_than_stand_in_the_lot_is_refused_with_both_numbers() {
    lost(19);

    assertThatThrownBy(() -> lost(2)).hasMessage("2 lost, 1 in the lot.");
  }

  @Test
  void a_corrected_loss_counts_once_and_stays_readable() {
    lost(3);
    UUID earlier = losses.findByLotIdOrderByOnDate(lot).get(0).id();

    records.correctLoss(earlier, new NewLoss(AUTUMN, 1, "frost", null), "two were only dry");

    assertThat(lots.ledger(lot, SPRING).lost()).isEqualTo(1);
    assertThat(losses.findByLotIdOrderByOnDate(lot)).hasSize(2);
    assertThatThrownBy(
            () -> records.correctLoss(earlier, new NewLoss(AUTUMN, 2, "frost", null), "again"))
        .hasMessageContaining("replaced before");
  }

  @Test
  void a_corrected_count_gives_its_reason() {
    counted(AUTUMN, 20);
    UUID earlier = counts.findByLotIdOrderByOnDate(lot).get(0).id();
    NewCount again = new NewCount(AUTUMN, 19, 15, null, null);

    assertThatThrownBy(() -> records.correctCount(earlier, again, " "))
        .hasMessageContaining("Say why");
  }

  @Test
  void a_count_of_tomorrow_is_refused() {
    assertThatThrownBy(() -> counted(LocalDate.now().plusDays(2), 20))
        .hasMessageContaining("lies ahead");
  }
}
