package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.CandidateEvents;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** Sets up runs, batches and trays. */
@Service
public class Sticking {

  private final StickingRuns runs;
  private final Batches batches;
  private final Trays trays;
  private final Units units;
  private final Identity identity;
  private final BenchLists bench;
  private final CandidateEvents events;
  private final Recorder recorder;
  private final Clock clock;

  Sticking(
      StickingRuns runs,
      Batches batches,
      Trays trays,
      Units units,
      Identity identity,
      BenchLists bench,
      CandidateEvents events,
      Recorder recorder,
      Clock clock) {
    this.runs = runs;
    this.batches = batches;
    this.trays = trays;
    this.units = units;
    this.identity = identity;
    this.bench = bench;
    this.events = events;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * @throws trialwood.record.Refused when the code is taken or a setting is impossible
   */
  @Transactional
  public StickingRun run(NewRun said) {
    return run(said, null);
  }

  /**
   * @param checked what was asked about the run, and the answer
   * @throws trialwood.record.Refused when the code is taken or a setting is impossible
   */
  @Transactional
  public StickingRun run(NewRun said, @Nullable Checked checked) {
    Check.that()
        .holds(
            runs.findByCode(said.code().strip()).isEmpty(),
            "run",
            "There is a run %s already.".formatted(said.code().strip()))
        .orRefuse();
    return runs.save(new StickingRun(said, checked, recorder.by(null)));
  }

  /**
   * @throws trialwood.record.Refused when the code is taken
   */
  @Transactional
  public Batch batch(Batch batch) {
    Check.that()
        .holds(
            batches.findByCode(batch.code()).isEmpty(),
            "batch",
            "There is a batch %s already.".formatted(batch.code()))
        .orRefuse();
    return batches.save(batch);
  }

  /**
   * Sticks a tray: from this day its label stands for the accession.
   *
   * @throws trialwood.record.Refused when the label is in use, the day outside the run, more is
   *     stuck than fits, or the cuttings are said to come from an ortet that was lost before
   */
  @Transactional
  public Tray tray(StickingRun run, Batch batch, NewTray said) {
    refuseIfInUse(said.label());
    if (batch.source() == Batch.Source.ORTET) {
      refuseIfLost(said.accessionId(), said.stuckOn());
    }
    Check.that()
        .holds(
            !said.stuckOn().isBefore(run.fromDate()) && !said.stuckOn().isAfter(run.toDate()),
            "stuck_on",
            "Run %s was stuck from %s to %s."
                .formatted(run.code(), Measures.day(run.fromDate()), Measures.day(run.toDate())))
        .holds(
            !said.stuckOn().isAfter(LocalDate.now(clock)),
            "stuck_on",
            "A tray is recorded when it is stuck, not before.")
        .orRefuse();
    Recorded recorded = recorder.by(said.personId());
    UUID unit =
        Objects.requireNonNull(units.save(new Unit(UnitKind.TRAY, said.label(), null)).id());
    Tray tray =
        trays.save(
            new Tray(
                unit,
                Objects.requireNonNull(batch.id()),
                said.cells(),
                said.stuckOn(),
                said.stuck(),
                said.block(),
                said.place(),
                recorded));
    identity.say(
        new Tie(
            unit,
            said.accessionId(),
            said.stuckOn(),
            null,
            "stuck in run " + run.code(),
            null,
            said.stuckOn(),
            recorded));
    return tray;
  }

  private void refuseIfInUse(String label) {
    units
        .labelled(label)
        .ifPresent(
            unit -> {
              throw new Refused(
                  "tray",
                  bench
                      .tray(Objects.requireNonNull(unit.id()))
                      .map(
                          tray ->
                              "Tray %s holds %s, stuck on %s. A tray holds one clone: take another tray."
                                  .formatted(
                                      tray.tray(), tray.accession(), Measures.day(tray.stuckOn())))
                      .orElse("The label %s is in use.".formatted(unit.label())));
            });
  }

  private void refuseIfLost(UUID accessionId, LocalDate day) {
    events
        .ortetLost(accessionId, day)
        .ifPresent(
            loss -> {
              throw new Refused(
                  "source",
                  "The ortet was recorded lost on %s: %s. Say what the cuttings were taken from, or put the ortet's record right."
                      .formatted(Measures.day(loss.onDate()), loss.note()));
            });
  }
}
