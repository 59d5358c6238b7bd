package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Identity;
import trialwood.unit.Unit;
import trialwood.unit.Units;

/**
 * Splits trays and puts trays together. Only cuttings that nobody has closed with a final count go
 * from tray to tray, and only within their batch: what is counted at the end belongs to the tray
 * that holds it then.
 */
@Service
public class TrayMoves {

  private final TrayRecords records;
  private final Trays trays;
  private final TrayPassages passages;
  private final PassagesTakenBack takenBack;
  private final FinalCounts counts;
  private final Sticking sticking;
  private final Batches batches;
  private final StickingRuns runs;
  private final Units units;
  private final Identity identity;
  private final Recorder recorder;

  TrayMoves(
      TrayRecords records,
      Trays trays,
      TrayPassages passages,
      PassagesTakenBack takenBack,
      FinalCounts counts,
      Sticking sticking,
      Batches batches,
      StickingRuns runs,
      Units units,
      Identity identity,
      Recorder recorder) {
    this.records = records;
    this.trays = trays;
    this.passages = passages;
    this.takenBack = takenBack;
    this.counts = counts;
    this.sticking = sticking;
    this.batches = batches;
    this.runs = runs;
    this.units = units;
    this.identity = identity;
    this.recorder = recorder;
  }

  /**
   * Puts cuttings of a tray into a new tray of the same batch and accession.
   *
   * @param label of the new tray
   * @param cells of the new tray
   * @throws Refused when the label is in use, the cuttings do not fit or are not there, or the tray
   *     is closed
   */
  @Transactional
  public TrayPassage split(
      UUID fromId,
      String label,
      int cells,
      LocalDate on,
      int number,
      @Nullable String note,
      @Nullable UUID personId) {
    Tray from = open(fromId, on, "number");
    refuseMoreThanPresent(from, number, on);
    Batch batch = batches.findById(from.batchId()).orElseThrow();
    StickingRun run = runs.findById(batch.runId()).orElseThrow();
    Tray to =
        sticking.tray(
            run,
            batch,
            new NewTray(
                label,
                accession(fromId),
                cells,
                from.stuckOn(),
                number,
                from.block(),
                null,
                personId));
    return passages.saveAndFlush(
        new TrayPassage(
            from, to, on, number, present(from, on), true, note, recorder.by(personId)));
  }

  /**
   * Says that a tray that is on record already began with cuttings of another.
   *
   * @throws Refused when it is not so many
   */
  @Transactional
  public TrayPassage began(
      UUID fromId, UUID toId, LocalDate on, int number, @Nullable String note, UUID personId) {
    Tray from = records.take(fromId, on);
    Tray to = records.take(toId, on);
    Check.that()
        .holds(
            to.stuck() == number,
            "number",
            "The tray began with %d, this says %d.".formatted(to.stuck(), number))
        .orRefuse();
    return passages.saveAndFlush(
        new TrayPassage(
            from, to, on, number, present(from, on), true, note, recorder.by(personId)));
  }

  /**
   * Puts cuttings of a tray into another that holds the same accession and batch. Both labels were
   * read off the trays.
   *
   * @param number all that are there, when absent
   * @throws Refused when the trays hold different accessions or batches, the cuttings are not there
   *     or do not fit, or one of the trays is closed
   */
  @Transactional
  public TrayPassage bring(
      UUID fromId,
      UUID toId,
      LocalDate on,
      @Nullable Integer number,
      @Nullable String note,
      @Nullable UUID personId) {
    boolean inOrder = fromId.compareTo(toId) < 0;
    records.take(inOrder ? fromId : toId, on);
    Tray from = open(fromId, on, "from");
    Tray to = open(toId, on, "to");
    int there = present(to, on);
    int moved = number == null ? present(from, on) : number;
    Check.that()
        .holds(
            accession(fromId).equals(accession(toId)),
            "from",
            "%s and %s hold different accessions. A tray holds one clone."
                .formatted(label(fromId), label(toId)))
        .holds(
            there + moved <= to.cells(),
            "number",
            "%d would be in the tray, but it has %d cells.".formatted(there + moved, to.cells()))
        .orRefuse();
    return passages.saveAndFlush(
        new TrayPassage(
            from, to, on, moved, present(from, on), false, note, recorder.by(personId)));
  }

  /**
   * Takes a passage back, as long as nothing was recorded of either tray since. A tray that began
   * with it is void from then on.
   *
   * @throws Refused when something was recorded since, or it was taken back before
   */
  @Transactional
  public void takeBack(UUID passageId, String reason, LocalDate today, @Nullable UUID personId) {
    TrayPassage passage =
        passages
            .findById(passageId)
            .orElseThrow(() -> new Refused("reason", "There is no such move."));
    records.take(passage.fromTrayId(), today);
    Check.that()
        .holds(!passages.takenBack(passageId), "reason", "This was taken back before.")
        .holds(
            !passages.followed(
                passage.fromTrayId(), passage.toTrayId(), passage.recorded().recordedAt()),
            "reason",
            "Something was recorded of these trays since. Move the cuttings back instead.")
        .orRefuse();
    takenBack.saveAndFlush(new PassageTakenBack(passage, reason, recorder.by(personId)));
    if (passage.begins()) {
      records.rule(passage.toTrayId(), today, false, "split taken back: " + reason, personId);
    }
  }

  /** Cuttings in a tray on a day, dead ones that were left in it among them. */
  private int present(Tray tray, LocalDate on) {
    return tray.stuck() + passages.changed(tray.unitId(), on) - passages.gone(tray.unitId());
  }

  private void refuseMoreThanPresent(Tray from, int number, LocalDate on) {
    int present = present(from, on);
    if (number > present) {
      throw new Refused(
          "number", "%d to be moved, but only %d are in the tray.".formatted(number, present));
    }
  }

  private Tray open(UUID trayId, LocalDate on, String field) {
    Tray tray = records.take(trayId, on);
    Check.that()
        .holds(
            counts.standing(trayId).isEmpty(),
            field,
            "The final count of %s is in; its cuttings are potted from it."
                .formatted(label(trayId)))
        .orRefuse();
    return tray;
  }

  private UUID accession(UUID trayId) {
    return identity
        .holder(trayId)
        .orElseThrow(() -> new Refused("from", "Nobody said whose cuttings these are."));
  }

  private String label(UUID trayId) {
    return units.findById(trayId).map(Unit::label).orElse("");
  }
}
