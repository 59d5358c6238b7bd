package trialwood.propagation;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Problem;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.web.Questions;

/** The count that closes a tray, and how its rooted cuttings live after it, without mist. */
@Service
public class Closing {

  private final TrayRecords records;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;
  private final TrayQuestions questions;
  private final Recorder recorder;

  Closing(
      TrayRecords records,
      TakenOuts takenOuts,
      FinalCounts counts,
      Weanings weanings,
      TrayQuestions questions,
      Recorder recorder) {
    this.records = records;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
    this.questions = questions;
    this.recorder = recorder;
  }

  /**
   * A final count from a file. Sent twice with the same numbers a count is kept once; a second,
   * different count is kept beside the first until a person settles on one.
   */
  @Transactional
  public FinalCount finalCount(UUID trayId, NewFinalCount said, @Nullable UUID personId) {
    FinalCount count = drafted(records.take(trayId, said.on()), said, personId);
    if (said.settles() == null && !isKept(count)) {
      questions
          .moreAlive(count, records.looksAt(trayId))
          .ifPresent(question -> ask(count, question));
    }
    return keep(count, said.settles());
  }

  /**
   * A final count from a page.
   *
   * @param asked what its author was asked before, and the answer
   * @throws trialwood.record.Refused with the questions, when a number is unusual and no answer was
   *     given
   */
  @Transactional
  public FinalCount finalCount(
      UUID trayId, NewFinalCount said, @Nullable UUID personId, Questions asked) {
    Tray tray = records.take(trayId, said.on());
    FinalCount count = drafted(tray, said, personId);
    if (!isKept(count)) {
      records.keepAnswered(
          questions.about(tray, count, records.looksAt(trayId)),
          asked,
          trayId,
          count.onDate(),
          count.recorded());
    }
    return keep(count, said.settles());
  }

  private FinalCount drafted(Tray tray, NewFinalCount said, @Nullable UUID personId) {
    return new FinalCount(
        tray,
        records.held(tray, said.on()),
        said,
        takenOuts.soFar(tray.unitId()),
        recorder.by(personId));
  }

  private boolean isKept(FinalCount count) {
    return counts.standing(count.trayId()).stream().anyMatch(count::saysTheSameAs);
  }

  private FinalCount keep(FinalCount count, @Nullable String settles) {
    List<FinalCount> standing = counts.standing(count.trayId());
    if (settles != null) {
      return settle(count, standing, settles);
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
    return counts.save(count);
  }

  /** Whether final counts of a tray contradict each other. */
  public boolean isInConflict(UUID trayId) {
    return counts.standing(trayId).size() > 1;
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

  private void ask(FinalCount count, String question) {
    records.ask(count.trayId(), count.onDate(), question, count.recorded());
  }

  /** How the rooted ones live without mist, from a file. */
  @Transactional
  public Weaning weaning(UUID trayId, NewWeaning said, @Nullable UUID personId) {
    Weaning weaning =
        new Weaning(records.take(trayId, said.on()), closed(trayId), said, recorder.by(personId));
    questions
        .moreAlive(weaning, weanings.standing(trayId))
        .ifPresent(question -> records.ask(trayId, weaning.onDate(), question, weaning.recorded()));
    return weanings.save(weaning);
  }

  /**
   * How the rooted ones live without mist, from a page.
   *
   * @param asked what its author was asked before, and the answer
   * @throws trialwood.record.Refused with the questions, when a number is unusual and no answer was
   *     given
   */
  @Transactional
  public Weaning weaning(UUID trayId, NewWeaning said, @Nullable UUID personId, Questions asked) {
    Tray tray = records.take(trayId, said.on());
    FinalCount count = closed(trayId);
    Weaning weaning = new Weaning(tray, count, said, recorder.by(personId));
    return keep(weaning, questions.about(count, weaning, weanings.standing(trayId)), asked);
  }

  /**
   * Puts a weaning count in the place of an earlier one of the same tray; both stay readable.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public Weaning correctWeaning(
      UUID trayId,
      UUID earlierId,
      NewWeaning said,
      String reason,
      @Nullable UUID personId,
      Questions asked) {
    Tray tray = records.take(trayId, said.on());
    TrayRecords.refuseUnlessItStands(
        weanings.findById(earlierId).filter(it -> it.trayId().equals(trayId)).isPresent(),
        weanings.existsBySupersedesId(earlierId));
    FinalCount count = closed(trayId);
    Weaning weaning =
        new Weaning(tray, count, said, recorder.by(personId)).insteadOf(earlierId, reason);
    List<Weaning> others =
        weanings.standing(trayId).stream().filter(it -> !earlierId.equals(it.id())).toList();
    return keep(weaning, questions.about(count, weaning, others), asked);
  }

  private Weaning keep(Weaning weaning, List<Problem> unusual, Questions asked) {
    records.keepAnswered(unusual, asked, weaning.trayId(), weaning.onDate(), weaning.recorded());
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
}
