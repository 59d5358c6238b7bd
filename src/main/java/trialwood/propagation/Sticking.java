package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

/** Sets up runs, batches and trays. */
@Service
public class Sticking {

  private final StickingRuns runs;
  private final Batches batches;
  private final Trays trays;
  private final Units units;
  private final Identity identity;
  private final Recorder recorder;
  private final Clock clock;

  Sticking(
      StickingRuns runs,
      Batches batches,
      Trays trays,
      Units units,
      Identity identity,
      Recorder recorder,
      Clock clock) {
    this.runs = runs;
    this.batches = batches;
    this.trays = trays;
    this.units = units;
    this.identity = identity;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * @throws trialwood.record.Refused when the code is taken or a setting is impossible
   */
  @Transactional
  public StickingRun run(NewRun said) {
    Check.that()
        .holds(
            runs.findByCode(said.code().strip()).isEmpty(),
            "run",
            "There is a run %s already.".formatted(said.code().strip()))
        .orRefuse();
    return runs.save(new StickingRun(said, recorder.by(null)));
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
   * @throws trialwood.record.Refused when the label is in use, the day outside the run, or more is
   *     stuck than fits
   */
  @Transactional
  public Tray tray(StickingRun run, Batch batch, NewTray said) {
    Check.that()
        .holds(
            units.labelled(said.label()).isEmpty(),
            "tray",
            "The label %s is in use.".formatted(said.label().strip()))
        .holds(
            !said.stuckOn().isBefore(run.fromDate()) && !said.stuckOn().isAfter(run.toDate()),
            "stuck_on",
            "Run %s was stuck from %s to %s.".formatted(run.code(), run.fromDate(), run.toDate()))
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
}
