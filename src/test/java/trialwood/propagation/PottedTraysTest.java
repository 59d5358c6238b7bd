package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Import;
import trialwood.record.Checked;
import trialwood.record.Recorder;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.PlantsTaken;
import trialwood.unit.PlantsWanted;

@RecordTest
@Import(PropagationSlice.class)
class PottedTraysTest {

  private static final LocalDate POTTED = Bench.COUNTED.plusDays(16);

  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired Doubts doubts;
  @Autowired Recorder recorder;
  @Autowired ApplicationEventPublisher events;

  private UUID tray;

  @BeforeEach
  void a_tray_of_24() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    tray = bench.tray(run, "22-B18-01-1", bench.accession("B18-01"), 24).unitId();
  }

  private void weaned(int alive) {
    closing.finalCount(tray, Bench.closing(Bench.COUNTED, 20), null);
    closing.weaning(
        tray,
        new NewWeaning(Bench.COUNTED, Bench.COUNTED.plusDays(14), alive, null, null, null),
        null);
  }

  private List<String> askedAfterPotting(int inAll) {
    events.publishEvent(new PlantsTaken(tray, POTTED, inAll, null, recorder.by(null)));
    return doubts.findByUnitIdOrderByOnDate(tray).stream().map(Doubt::question).toList();
  }

  @Test
  void as_many_potted_as_came_off_the_mist_is_not_asked_about() {
    weaned(16);

    assertThat(askedAfterPotting(16)).isEmpty();
  }

  @Test
  void more_potted_than_came_off_the_mist_is_kept_and_asked_about() {
    weaned(16);

    assertThat(askedAfterPotting(17))
        .containsExactly(
            "17 potted, but 16 alive off the mist on 18\u00a0Jul\u00a02022."
                + " Where do the others come from?");
  }

  private List<String> askedBeforePotting(int inAll) {
    List<String> unusual = new ArrayList<>();
    events.publishEvent(new PlantsWanted(tray, POTTED, inAll, unusual));
    return unusual;
  }

  @Test
  void more_than_came_off_the_mist_is_asked_about_before_potting() {
    weaned(16);

    assertThat(askedBeforePotting(16)).isEmpty();
    assertThat(askedBeforePotting(17))
        .containsExactly(
            "17 to pot, but 16 alive off the mist on 18\u00a0Jul\u00a02022."
                + " Where do the others come from?");
  }

  @Test
  void potting_before_weaning_is_done_is_asked_about() {
    assertThat(askedBeforePotting(20)).singleElement().asString().contains("Is weaning done?");
    closing.finalCount(tray, Bench.closing(Bench.COUNTED, 20), null);
    assertThat(askedBeforePotting(20)).singleElement().asString().contains("Is weaning done?");
  }

  @Test
  void what_was_asked_and_answered_before_is_not_asked_again() {
    weaned(16);
    Checked checked = new Checked("17 to pot?", "one spare");
    events.publishEvent(new PlantsTaken(tray, POTTED, 17, checked, recorder.by(null)));

    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).isEmpty();
  }

  @Test
  void those_potted_early_are_no_question() {
    records.takenOut(
        tray, new NewTakenOut(Bench.STUCK.plusDays(20), 2, true, TakenOut.Fate.POTTED, null), null);
    closing.finalCount(tray, new NewFinalCount(Bench.COUNTED, 20, 0, 2, 2, null, null, null), null);

    assertThat(askedAfterPotting(22)).isEmpty();
    assertThat(askedAfterPotting(23))
        .singleElement()
        .asString()
        .contains("23 potted, but the final count left 20 rooted and 2 potted early");
  }

  @Test
  void a_tray_nobody_closed_is_not_asked_about() {
    assertThat(askedAfterPotting(24)).isEmpty();
  }
}
