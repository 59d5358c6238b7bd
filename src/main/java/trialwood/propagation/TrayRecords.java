package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
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

/**
 * What is counted on a tray. Numbers that are impossible in themselves are refused; numbers that
 * contradict an earlier count are kept, and a question is raised.
 */
@Service
public class TrayRecords {

  private final Trays trays;
  private final TrayLooks looks;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;
  private final TrayRulings rulings;
  private final Doubts doubts;
  private final Recorder recorder;
  private final Clock clock;

  TrayRecords(
      Trays trays,
      TrayLooks looks,
      TakenOuts takenOuts,
      FinalCounts counts,
      Weanings weanings,
      TrayRulings rulings,
      Doubts doubts,
      Recorder recorder,
      Clock clock) {
    this.trays = trays;
    this.looks = looks;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
    this.rulings = rulings;
    this.doubts = doubts;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** An interim look at a sample. */
  @Transactional
  public TrayLook look(
      UUID trayId,
      LocalDate on,
      int lifted,
      int rooted,
      int alive,
      int deadRemoved,
      @Nullable String note,
      @Nullable UUID personId) {
    Tray tray = take(trayId, on);
    Recorded recorded = recorder.by(personId);
    TrayLook look = new TrayLook(tray, on, lifted, rooted, alive, deadRemoved, note, recorded);
    lastLookBefore(trayId, on)
        .filter(last -> alive > last.alive())
        .ifPresent(
            last ->
                doubt(
                    trayId,
                    on,
                    "%d alive, but %d on %s. Is this the same tray?"
                        .formatted(alive, last.alive(), last.onDate()),
                    recorded));
    return looks.save(look);
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
    Check.that()
        .holds(
            takenOuts.soFar(trayId).number() + number <= tray.stuck(),
            "number",
            "More would be taken out than were stuck.")
        .holds(
            counts.standing(trayId).isEmpty(),
            "number",
            "The final count is in; what comes out now is potted from it.")
        .orRefuse();
    return takenOuts.save(
        new TakenOut(tray, on, number, rooted, fate, note, recorder.by(personId)));
  }

  /**
   * The count that closes the tray. Sent twice with the same numbers it is kept once; a second,
   * different count is kept beside the first until a person settles on one.
   */
  @Transactional
  public FinalCount finalCount(UUID trayId, NewFinalCount said, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    Recorded recorded = recorder.by(personId);
    FinalCount count = new FinalCount(tray, said, takenOuts.soFar(trayId), recorded);
    List<FinalCount> standing = counts.standing(trayId);
    if (said.settles() != null) {
      return settle(count, standing);
    }
    for (FinalCount earlier : standing) {
      if (count.saysTheSameAs(earlier)) {
        return earlier;
      }
      doubt(
          trayId,
          said.on(),
          "Two final counts: %d and %d rooted. Which one is right?"
              .formatted(earlier.rooted(), count.rooted()),
          recorded);
    }
    askIfMoreAliveThan(tray, count, recorded);
    return counts.save(count);
  }

  private FinalCount settle(FinalCount count, List<FinalCount> standing) {
    Check.that()
        .holds(!standing.isEmpty(), "settles", "There is no count to correct.")
        .holds(
            !Objects.requireNonNull(count.supersedeReason()).isBlank(),
            "settles",
            "Say why the earlier count is replaced.")
        .orRefuse();
    FinalCount saved = counts.saveAndFlush(count);
    standing.forEach(
        earlier ->
            counts.supersede(
                Objects.requireNonNull(earlier.id()), Objects.requireNonNull(saved.id())));
    return saved;
  }

  private void askIfMoreAliveThan(Tray tray, FinalCount count, Recorded recorded) {
    int alive = count.rooted() + count.aliveWithoutRoots();
    lastLookBefore(tray.unitId(), count.onDate())
        .filter(last -> alive > last.alive())
        .ifPresent(
            last ->
                doubt(
                    tray.unitId(),
                    count.onDate(),
                    "%d alive at the final count, but %d on %s. Is this the same tray?"
                        .formatted(alive, last.alive(), last.onDate()),
                    recorded));
  }

  /** How the rooted ones live without mist. */
  @Transactional
  public Weaning weaning(
      UUID trayId,
      LocalDate lastMist,
      LocalDate on,
      int alive,
      @Nullable Integer wilted,
      @Nullable Integer shock,
      @Nullable String note,
      @Nullable UUID personId) {
    take(trayId, on);
    List<FinalCount> standing = counts.standing(trayId);
    if (standing.size() != 1) {
      throw new Refused(
          "alive",
          standing.isEmpty()
              ? "Take the final count first: only rooted cuttings come off the mist."
              : "Two final counts stand; settle on one first.");
    }
    Recorded recorded = recorder.by(personId);
    Weaning weaning =
        new Weaning(standing.get(0), lastMist, on, alive, wilted, shock, note, recorded);
    weanings.standing(trayId).stream()
        .filter(last -> last.onDate().isBefore(on) && alive > last.alive())
        .findFirst()
        .ifPresent(
            last ->
                doubt(
                    trayId,
                    on,
                    "%d alive off the mist, but %d on %s. Is this the same tray?"
                        .formatted(alive, last.alive(), last.onDate()),
                    recorded));
    return weanings.save(weaning);
  }

  /** Declares a tray void, or lets it count again. */
  @Transactional
  public TrayRuling rule(
      UUID trayId, LocalDate on, boolean counts, String reason, @Nullable UUID personId) {
    take(trayId, on);
    return rulings.save(new TrayRuling(trayId, on, counts, reason, recorder.by(personId)));
  }

  private Tray take(UUID trayId, LocalDate on) {
    Check.that()
        .holds(
            !on.isAfter(LocalDate.now(clock)), "on", "This day is still to come: %s.".formatted(on))
        .orRefuse();
    return trays.take(trayId).orElseThrow(() -> new Refused("tray", "There is no such tray."));
  }

  private Optional<TrayLook> lastLookBefore(UUID trayId, LocalDate on) {
    return looks.standing(trayId).stream()
        .filter(look -> look.onDate().isBefore(on))
        .reduce((earlier, later) -> later);
  }

  private void doubt(UUID trayId, LocalDate on, String question, Recorded recorded) {
    doubts.save(new Doubt(trayId, on, question, recorded));
  }
}
