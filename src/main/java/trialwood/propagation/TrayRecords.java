package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.web.Measures;
import trialwood.web.Questions;

/**
 * What happens to a tray under the mist. Numbers that are impossible in themselves are refused;
 * unusual ones are asked about, and the reason is kept. From a file nobody can be asked: a
 * contradiction is kept, and a question stays open.
 */
@Service
public class TrayRecords {

  private final Trays trays;
  private final TrayLooks looks;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final TrayPassages passages;
  private final TrayRulings rulings;
  private final TrayQuestions questions;
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
      TrayQuestions questions,
      Doubts doubts,
      Recorder recorder,
      Clock clock) {
    this.trays = trays;
    this.looks = looks;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.passages = passages;
    this.rulings = rulings;
    this.questions = questions;
    this.doubts = doubts;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** A look from a file: nobody can be asked, so a contradiction stays an open question. */
  @Transactional
  public TrayLook look(UUID trayId, NewLook said, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    List<TrayLook> others = looks.standing(trayId);
    TrayLook look = drafted(tray, said, others, personId);
    questions
        .moreAlive(look, others)
        .ifPresent(question -> ask(trayId, look.onDate(), question, look.recorded()));
    return looks.save(look);
  }

  /**
   * A look from a page.
   *
   * @param asked what its author was asked before, and the answer
   * @throws trialwood.record.Refused with the questions, when a number is unusual and no answer was
   *     given
   */
  @Transactional
  public TrayLook look(UUID trayId, NewLook said, @Nullable UUID personId, Questions asked) {
    Tray tray = take(trayId, said.on());
    List<TrayLook> others = looks.standing(trayId);
    return keep(tray, drafted(tray, said, others, personId), others, asked);
  }

  /**
   * Puts a look in the place of an earlier one of the same tray; both stay readable.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public TrayLook correctLook(
      UUID trayId,
      UUID earlierId,
      NewLook said,
      String reason,
      @Nullable UUID personId,
      Questions asked) {
    Tray tray = take(trayId, said.on());
    refuseUnlessItStands(
        looks.findById(earlierId).filter(it -> it.trayId().equals(trayId)).isPresent(),
        looks.existsBySupersedesId(earlierId));
    List<TrayLook> others =
        looks.standing(trayId).stream().filter(it -> !earlierId.equals(it.id())).toList();
    TrayLook right = drafted(tray, said, others, personId).insteadOf(earlierId, reason);
    return keep(tray, right, others, asked);
  }

  private TrayLook drafted(
      Tray tray, NewLook said, List<TrayLook> others, @Nullable UUID personId) {
    int thrownOut =
        others.stream()
            .filter(look -> look.onDate().isBefore(said.on()))
            .mapToInt(TrayLook::deadRemoved)
            .sum();
    int takenOut = takenOuts.soFar(tray.unitId(), said.on()).number();
    return new TrayLook(
        tray, held(tray, said.on()), said, thrownOut + takenOut, recorder.by(personId));
  }

  private TrayLook keep(Tray tray, TrayLook look, List<TrayLook> others, Questions asked) {
    keepAnswered(
        questions.about(tray, look, others), asked, tray.unitId(), look.onDate(), look.recorded());
    return looks.save(look);
  }

  /** The looks of a tray that stand, by their days. */
  List<TrayLook> looksAt(UUID trayId) {
    return looks.standing(trayId);
  }

  /** Cuttings that leave the tray before its final count. */
  @Transactional
  public TakenOut takenOut(UUID trayId, NewTakenOut said, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    Check.that()
        .holds(
            takenOuts.soFar(trayId).number() + said.number() <= held(tray, said.on()),
            "number",
            "More would be taken out than were stuck.")
        .holds(
            counts.standing(trayId).isEmpty(),
            "number",
            "The final count is in; what comes out now is potted from it.")
        .orRefuse();
    return takenOuts.save(new TakenOut(tray, held(tray, said.on()), said, recorder.by(personId)));
  }

  /**
   * Puts what was taken out right; both stay readable. A final count that rests on the earlier
   * record is asked about.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public TakenOut correctTakenOut(
      UUID trayId, UUID earlierId, NewTakenOut said, String reason, @Nullable UUID personId) {
    Tray tray = take(trayId, said.on());
    Optional<TakenOut> earlier =
        takenOuts.findById(earlierId).filter(it -> it.trayId().equals(trayId));
    refuseUnlessItStands(earlier.isPresent(), takenOuts.existsBySupersedesId(earlierId));
    int others = takenOuts.soFar(trayId).number() - earlier.map(TakenOut::number).orElse(0);
    Check.that()
        .holds(
            others + said.number() <= held(tray, said.on()),
            "number",
            "More would be taken out than were stuck.")
        .orRefuse();
    TakenOut right =
        takenOuts.saveAndFlush(
            new TakenOut(tray, held(tray, said.on()), said, recorder.by(personId))
                .insteadOf(earlierId, reason));
    TakenSoFar now = takenOuts.soFar(trayId);
    counts.standing(trayId).stream()
        .filter(it -> it.takenOut() != now.number() || it.takenOutRooted() != now.rooted())
        .findFirst()
        .ifPresent(
            count ->
                ask(
                    trayId,
                    right.onDate(),
                    "The final count of %s rests on %d taken out, %d of them rooted; put right it is %d, %d rooted. Count again?"
                        .formatted(
                            Measures.day(count.onDate()),
                            count.takenOut(),
                            count.takenOutRooted(),
                            now.number(),
                            now.rooted()),
                    right.recorded()));
    return right;
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

  void ask(UUID trayId, LocalDate on, String question, Recorded recorded) {
    doubts.save(new Doubt(trayId, on, question, recorded));
  }

  /** Keeps what its author was asked about a record, and the answer. */
  void keepAnswered(
      List<Problem> unusual, Questions asked, UUID trayId, LocalDate on, Recorded recorded) {
    asked.ask(unusual);
    Checked answer = asked.orAsk();
    if (answer != null) {
      unusual.forEach(
          question -> {
            Doubt doubt = new Doubt(trayId, on, question.sentence(), recorded);
            doubt.answer(answer.checked(), recorded);
            doubts.save(doubt);
          });
    }
  }

  static void refuseUnlessItStands(boolean known, boolean replaced) {
    Check.that()
        .holds(known, "corrects", "This record is not one of this tray's.")
        .holds(!replaced, "corrects", "This record was replaced before; correct the newest one.")
        .orRefuse();
  }
}
