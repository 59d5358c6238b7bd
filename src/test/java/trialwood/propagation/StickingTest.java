package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.Candidates;
import trialwood.record.Recorder;
import trialwood.testing.RecordTest;

@RecordTest
@Import(PropagationSlice.class)
class StickingTest {

  @Autowired Bench bench;
  @Autowired Sticking sticking;
  @Autowired Candidates candidates;
  @Autowired CandidateEvents events;
  @Autowired Recorder recorder;

  private StickingRun run;
  private UUID plant;

  @BeforeEach
  void a_run() {
    run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    plant = bench.accession("C18-03");
    candidates.save(new Candidate(plant));
  }

  @Test
  void a_second_clone_in_a_tray_is_stopped_and_told_whose_tray_it_is() {
    bench.tray(run, "22-C18-03-1", plant, 24);

    assertThatThrownBy(() -> bench.tray(run, "22-c18-3-1", bench.accession("C18-04"), 24))
        .hasMessage(
            "Tray 22-C18-03-1 holds C18-03, stuck on 6\u00a0Jun\u00a02022."
                + " A tray holds one clone: take another tray.");
  }

  @Test
  void a_day_outside_the_run_is_refused_in_plain_words() {
    Batch batch = batch(Batch.Source.STOCK_PLANT);

    assertThatThrownBy(() -> sticking.tray(run, batch, tray(Bench.STUCK.plusDays(9))))
        .hasMessage("Run R22 was stuck from 6\u00a0Jun\u00a02022 to 8\u00a0Jun\u00a02022.");
  }

  @Test
  void cuttings_from_an_ortet_recorded_dead_are_refused() {
    said(CandidateEvent.Kind.ORTET_LOST, Bench.STUCK.minusDays(20));

    assertThatThrownBy(() -> sticking.tray(run, batch(Batch.Source.ORTET), tray(Bench.STUCK)))
        .hasMessageContaining("The ortet was recorded lost on 17\u00a0May\u00a02022: root rot.");
  }

  @Test
  void its_copies_can_be_propagated_on() {
    said(CandidateEvent.Kind.ORTET_LOST, Bench.STUCK.minusDays(20));

    assertThat(sticking.tray(run, batch(Batch.Source.STOCK_PLANT), tray(Bench.STUCK)).stuck())
        .isEqualTo(24);
  }

  @Test
  void an_ortet_that_died_after_the_day_or_was_found_again_gives_cuttings() {
    said(CandidateEvent.Kind.ORTET_LOST, Bench.STUCK.minusDays(20));
    said(CandidateEvent.Kind.ORTET_MOVED, Bench.STUCK.minusDays(10));
    said(CandidateEvent.Kind.ORTET_LOST, Bench.STUCK.plusDays(1));

    assertThat(sticking.tray(run, batch(Batch.Source.ORTET), tray(Bench.STUCK)).stuck())
        .isEqualTo(24);
  }

  private void said(CandidateEvent.Kind kind, LocalDate on) {
    events.save(new CandidateEvent(plant, on, kind, "root rot", recorder.by(null)));
  }

  private Batch batch(Batch.Source source) {
    return sticking.batch(
        new Batch(Objects.requireNonNull(run.id()), "22-C18-03", source, null, null));
  }

  private NewTray tray(LocalDate on) {
    return new NewTray("22-C18-03-1", plant, 24, on, 24, "1", null, null);
  }
}
