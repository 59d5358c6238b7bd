package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubts;
import trialwood.web.Questions;

/** What was said wrongly about a tray is put right by a new record; both stay readable. */
@RecordTest
@Import(PropagationSlice.class)
class CorrectedTrayTest {

  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired TraySheets sheets;
  @Autowired Doubts doubts;

  private UUID tray;

  @BeforeEach
  void a_tray_of_24() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    tray = bench.tray(run, "22-A-1", bench.accession("A18-04"), 24).unitId();
  }

  private static NewLook look(int day, int alive) {
    return new NewLook(Bench.STUCK.plusDays(day), 5, 1, alive, 0, null);
  }

  private UUID looked(int day, int alive) {
    return records.look(tray, look(day, alive), null).id();
  }

  private TraySheet sheet() {
    bench.flush();
    return sheets.of("22-A-1").orElseThrow();
  }

  @Test
  void a_corrected_look_stands_and_the_earlier_one_stays_readable() {
    UUID earlier = looked(14, 12);

    records.correctLook(tray, earlier, look(14, 21), "12 was the tray beside it", null, unasked());

    assertThat(sheet().looks()).extracting(TrayLook::alive).containsExactly(12, 21);
    assertThat(sheet().looks()).map(sheet()::isReplaced).containsExactly(true, false);
    assertThat(sheet().lastLook()).isNotNull().extracting(TrayLook::alive).isEqualTo(21);
  }

  @Test
  void a_correction_without_a_reason_is_refused() {
    UUID earlier = looked(14, 12);

    assertThatThrownBy(() -> records.correctLook(tray, earlier, look(14, 21), " ", null, unasked()))
        .hasMessageContaining("Say why");
  }

  @Test
  void a_look_is_corrected_once_and_then_its_correction_is() {
    UUID earlier = looked(14, 12);
    records.correctLook(tray, earlier, look(14, 21), "wrong tray", null, unasked());

    assertThatThrownBy(
            () -> records.correctLook(tray, earlier, look(14, 20), "again", null, unasked()))
        .hasMessageContaining("replaced before");
  }

  @Test
  void a_look_at_another_tray_is_not_corrected_here() {
    StickingRun run = bench.run("R23", Bench.STUCK.plusYears(1), bench.accession("CK-C"));
    Tray other = bench.tray(run, "23-A-1", bench.accession("B18-01"), 24);
    UUID earlier = looked(14, 12);

    assertThatThrownBy(
            () ->
                records.correctLook(
                    other.unitId(), earlier, look(400, 21), "wrong tray", null, unasked()))
        .hasMessageContaining("not one of this tray's");
  }

  @Test
  void a_look_put_on_a_later_day_is_not_held_against_what_it_replaces() {
    UUID earlier = looked(14, 12);

    records.correctLook(tray, earlier, look(18, 21), "day and number were wrong", null, unasked());

    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).isEmpty();
  }

  @Test
  void a_corrected_weaning_counts_once() {
    closing.finalCount(tray, Bench.closing(Bench.COUNTED, 20), null);
    NewWeaning wrong =
        new NewWeaning(Bench.COUNTED, Bench.COUNTED.plusDays(14), 8, null, null, null);
    NewWeaning right =
        new NewWeaning(Bench.COUNTED, Bench.COUNTED.plusDays(14), 18, null, null, null);
    UUID earlier = closing.weaning(tray, wrong, null).id();
    bench.flush();

    closing.correctWeaning(tray, earlier, right, "8 should read 18", null, unasked());

    assertThat(sheet().line().alive14()).isEqualTo(18);
    assertThat(sheet().weanings()).hasSize(2);
  }

  @Test
  void a_record_names_the_account_where_no_initials_were_picked() {
    looked(14, 12);

    assertThat(sheet().by(sheet().looks().get(0))).isNotBlank();
  }

  private static Questions unasked() {
    return new Questions(null, null);
  }
}
