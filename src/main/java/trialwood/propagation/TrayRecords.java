package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.web.Measures;

/**
 * What happens to a tray under the mist. Numbers that are impossible in themselves are refused;
 * numbers that contradict an earlier count are kept, and a question is raised.
 */
@Service
public class TrayRecords {

  private final Trays trays;
  private final TrayLooks looks;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final TrayPassages passages;
  private final TrayRulings rulings;
  private final Doubts doubts;
  private final Recorder recorder;
  private final Clock clock;

  TrayRecords(
      Trays trays,
      TrayLooks looks,
      TakenOuts takenOuts,
      FinalCounts counts,
      TrayPassages passages,
      TrayRulings rulings,
      Doubts doubts,
      Recorder recorder,
      Clock clock) {
    this.trays = trays;
    this.looks = looks;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.passages = passages;
    this.rulings = rulings;
    this.doubts = doubts;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** An interim look at a sample. */
  @Transactional
  public TrayLook look(UUID trayId, NewLook said, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    TrayLook look = new TrayLook(tray, held(tray, said.on()), said, recorder.by(personId));
    lastLookBefore(trayId, said.on()).ifPresent(last -> askIfMoreAlive(look, last));
    return looks.save(look);
  }

  /**
   * Puts a look in the place of an earlier one of the same tray; both stay readable.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public TrayLook correctLook(
      UUID trayId, UUID earlierId, NewLook said, String reason, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    refuseUnlessItStands(
        looks.findById(earlierId).filter(it -> it.trayId().equals(trayId)).isPresent(),
        looks.existsBySupersedesId(earlierId));
    TrayLook look =
        new TrayLook(tray, held(tray, said.on()), said, recorder.by(personId))
            .insteadOf(earlierId, reason);
    lastLookBefore(trayId, said.on())
        .filter(last -> !earlierId.equals(last.id()))
        .ifPresent(last -> askIfMoreAlive(look, last));
    return looks.save(look);
  }

  private void askIfMoreAlive(TrayLook look, TrayLook last) {
    if (look.alive() > last.alive() + came(look.trayId(), last.onDate(), look.onDate())) {
      ask(
          look.trayId(),
          look.onDate(),
          "%d alive, but %d on %s. Is this the same tray?"
              .formatted(look.alive(), last.alive(), Measures.day(last.onDate())),
          look.recorded());
    }
  }

  /** Cuttings that leave the tray before its final count. */
  @Transactional
  public TakenOut takenOut(
      UUID trayId,
      LocalDate on,
      int number,
      boolean rooted,
      TakenOut.Fate fate,
      @Nullable String note,
      @Nullable UUID personId) {
    Tray tray = take(trayId, on);
    int held = held(tray, on);
    Check.that()
        .holds(
            takenOuts.soFar(trayId).number() + number <= held,
            "number",
            "More would be taken out than were stuck.")
        .holds(
            counts.standing(trayId).isEmpty(),
            "number",
            "The final count is in; what comes out now is potted from it.")
        .orRefuse();
    return takenOuts.save(
        new TakenOut(tray, held, on, number, rooted, fate, note, recorder.by(personId)));
  }

  /** Declares a tray void, or lets it count again. */
  @Transactional
  public TrayRuling rule(
      UUID trayId, LocalDate on, boolean counts, String reason, @Nullable UUID personId) {
    take(trayId, on);
    return rulings.save(new TrayRuling(trayId, on, counts, reason, recorder.by(personId)));
  }

  /** The tray, held until the transaction ends. */
  Tray take(UUID trayId, LocalDate on) {
    Check.that()
        .holds(
            !on.isAfter(LocalDate.now(clock)),
            "on",
            "This day is still to come: %s.".formatted(Measures.day(on)))
        .orRefuse();
    return trays.take(trayId).orElseThrow(() -> new Refused("tray", "There is no such tray."));
  }

  /** What a tray holds by a day: the stuck, with what came from and without what went elsewhere. */
  int held(Tray tray, LocalDate on) {
    return tray.stuck() + passages.changed(tray.unitId(), on);
  }

  /** How many more cuttings came into a tray than went out of it between two days; 0 if fewer. */
  int came(UUID trayId, LocalDate after, LocalDate until) {
    return Math.max(0, passages.changed(trayId, until) - passages.changed(trayId, after));
  }

  Optional<TrayLook> lastLookBefore(UUID trayId, LocalDate on) {
    return looks.standing(trayId).stream()
        .filter(look -> look.onDate().isBefore(on))
        .reduce((earlier, later) -> later);
  }

  void ask(UUID trayId, LocalDate on, String question, Recorded recorded) {
    doubts.save(new Doubt(trayId, on, question, recorded));
  }

  static void refuseUnlessItStands(boolean known, boolean replaced) {
    Check.that()
        .holds(known, "corrects", "This record is not one of this tray's.")
        .holds(!replaced, "corrects", "This record was replaced before; correct the newest one.")
        .orRefuse();
  }
}
