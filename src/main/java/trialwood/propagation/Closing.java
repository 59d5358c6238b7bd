package trialwood.propagation;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.web.Measures;

/** The count that closes a tray, and how its rooted cuttings live after it, without mist. */
@Service
public class Closing {

  private final TrayRecords records;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;
  private final Recorder recorder;

  Closing(
      TrayRecords records,
      TakenOuts takenOuts,
      FinalCounts counts,
      Weanings weanings,
      Recorder recorder) {
    this.records = records;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
    this.recorder = recorder;
  }

  /**
   * Sent twice with the same numbers a count is kept once; a second, different count is kept beside
   * the first until a person settles on one.
   */
  @Transactional
  public FinalCount finalCount(UUID trayId, NewFinalCount said, @Nullable UUID personId) {
    Tray tray = records.take(trayId, said.on());
    FinalCount count =
        new FinalCount(
            tray,
            records.held(tray, said.on()),
            said,
            takenOuts.soFar(trayId),
            recorder.by(personId));
    List<FinalCount> standing = counts.standing(trayId);
    if (said.settles() != null) {
      return settle(count, standing, said.settles());
    }
    for (FinalCount earlier : standing) {
      if (count.saysTheSameAs(earlier)) {
        return earlier;
      }
      ask(
          count,
          "Two final counts: %d and %d rooted. Which one is right?"
              .formatted(earlier.rooted(), count.rooted()));
    }
    askIfMoreAliveThanAtTheLastLook(count);
    return counts.save(count);
  }

  private FinalCount settle(FinalCount count, List<FinalCount> standing, String reason) {
    Check.that()
        .holds(!standing.isEmpty(), "settles", "There is no count to correct.")
        .holds(!reason.isBlank(), "settles", "Say why the earlier count is replaced.")
        .orRefuse();
    FinalCount saved = counts.saveAndFlush(count);
    standing.forEach(
        earlier ->
            counts.supersede(
                Objects.requireNonNull(earlier.id()), Objects.requireNonNull(saved.id())));
    return saved;
  }

  private void askIfMoreAliveThanAtTheLastLook(FinalCount count) {
    int alive = count.rooted() + count.aliveWithoutRoots();
    records
        .lastLookBefore(count.trayId(), count.onDate())
        .filter(
            last ->
                alive > last.alive() + records.came(count.trayId(), last.onDate(), count.onDate()))
        .ifPresent(
            last ->
                ask(
                    count,
                    "%d alive at the final count, but %d on %s. Is this the same tray?"
                        .formatted(alive, last.alive(), Measures.day(last.onDate()))));
  }

  private void ask(FinalCount count, String question) {
    records.ask(count.trayId(), count.onDate(), question, count.recorded());
  }

  /** How the rooted ones live without mist. */
  @Transactional
  public Weaning weaning(UUID trayId, NewWeaning said, @Nullable UUID personId) {
    records.take(trayId, said.on());
    Weaning weaning = new Weaning(closed(trayId), said, recorder.by(personId));
    askIfMoreAliveThanBefore(weaning, weanings.standing(trayId));
    return weanings.save(weaning);
  }

  /**
   * Puts a weaning count in the place of an earlier one of the same tray; both stay readable.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public Weaning correctWeaning(
      UUID trayId, UUID earlierId, NewWeaning said, String reason, @Nullable UUID personId) {
    records.take(trayId, said.on());
    TrayRecords.refuseUnlessItStands(
        weanings.findById(earlierId).filter(it -> it.trayId().equals(trayId)).isPresent(),
        weanings.existsBySupersedesId(earlierId));
    Weaning weaning =
        new Weaning(closed(trayId), said, recorder.by(personId)).insteadOf(earlierId, reason);
    askIfMoreAliveThanBefore(
        weaning,
        weanings.standing(trayId).stream().filter(it -> !earlierId.equals(it.id())).toList());
    return weanings.save(weaning);
  }

  private FinalCount closed(UUID trayId) {
    List<FinalCount> standing = counts.standing(trayId);
    if (standing.size() != 1) {
      throw new Refused(
          "alive",
          standing.isEmpty()
              ? "Take the final count first: only rooted cuttings come off the mist."
              : "Two final counts stand; settle on one first.");
    }
    return standing.get(0);
  }

  private void askIfMoreAliveThanBefore(Weaning weaning, List<Weaning> others) {
    others.stream()
        .filter(last -> last.onDate().isBefore(weaning.onDate()))
        .filter(last -> weaning.alive() > last.alive())
        .findFirst()
        .ifPresent(
            last ->
                records.ask(
                    weaning.trayId(),
                    weaning.onDate(),
                    "%d alive off the mist, but %d on %s. Is this the same tray?"
                        .formatted(weaning.alive(), last.alive(), Measures.day(last.onDate())),
                    weaning.recorded()));
  }
}
