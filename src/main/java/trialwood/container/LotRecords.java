package trialwood.container;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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

/** Keeps what is counted, lost and given away, and asks about what does not agree. */
@Service
public class LotRecords {

  /** Later than any record. */
  private static final LocalDate EVER = LocalDate.of(9999, 12, 31);

  private final Lots lots;
  private final LotCounts counts;
  private final LotLosses losses;
  private final LotOutgoings outgoings;
  private final Doubts doubts;
  private final Recorder recorder;
  private final Clock clock;

  LotRecords(
      Lots lots,
      LotCounts counts,
      LotLosses losses,
      LotOutgoings outgoings,
      Doubts doubts,
      Recorder recorder,
      Clock clock) {
    this.lots = lots;
    this.counts = counts;
    this.losses = losses;
    this.outgoings = outgoings;
    this.doubts = doubts;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * Keeps a count. One that contradicts the count before it or the ledger is kept and asked about.
   *
   * @throws Refused when it is impossible in itself
   */
  @Transactional
  public void count(UUID lotId, NewCount count) {
    count(lotId, count, null);
  }

  /**
   * The same, after somebody was asked.
   *
   * @param checked answers what {@link #questions} asked; a second count of the same day stays an
   *     open question all the same
   */
  @Transactional
  public void count(UUID lotId, NewCount count, @Nullable Checked checked) {
    Lot lot = locked(lotId);
    refuseTomorrow(count.on());
    Recorded recorded = recorder.by(count.personId());
    counts
        .standingOn(lotId, count.on())
        .filter(other -> other.alive() != count.alive())
        .ifPresent(
            other ->
                ask(
                    lot,
                    count.on(),
                    "Two counts of one day: %d alive and %d alive. Both are kept; which is right?"
                        .formatted(other.alive(), count.alive()),
                    recorded));
    counts.save(new LotCount(lot, count, recorded));
    askAbout(lot, count, checked, recorded);
  }

  /**
   * What is unusual about a count by what is on record: more alive than before, or others than the
   * losses and the plants out leave.
   *
   * @param dead found with it, not recorded yet
   * @throws Refused when it is impossible in itself
   */
  @Transactional(readOnly = true)
  public List<Problem> questions(UUID lotId, NewCount count, int dead) {
    Lot lot = known(lotId);
    new LotCount(lot, count, recorder.by(count.personId()));
    return contradictions(lot, count, dead).stream()
        .map(sentence -> new Problem("alive", sentence))
        .toList();
  }

  /**
   * Puts a count in the place of an earlier one of the same lot; both stay readable.
   *
   * @throws Refused without a reason, or when the earlier one was replaced before
   */
  @Transactional
  public void correctCount(UUID earlierId, NewCount count, String reason) {
    LotCount earlier = counts.findById(earlierId).orElseThrow(() -> unknown("count"));
    Lot lot = locked(earlier.lotId());
    refuseReplaced(counts.existsBySupersedesId(earlierId));
    refuseTomorrow(count.on());
    Recorded recorded = recorder.by(count.personId());
    counts.save(new LotCount(lot, count, recorded).insteadOf(earlierId, reason));
    askAbout(lot, count, null, recorded);
  }

  /**
   * Keeps a loss.
   *
   * @throws Refused when it is impossible in itself or more than stand in the lot
   */
  @Transactional
  public void lose(UUID lotId, NewLoss loss) {
    Lot lot = locked(lotId);
    refuseTomorrow(loss.on());
    LotLoss made = new LotLoss(lot, loss, recorder.by(loss.personId()));
    refuseMoreThanThere(lot, loss.number(), "lost");
    losses.save(made);
  }

  /** Puts a loss in the place of an earlier one of the same lot; both stay readable. */
  @Transactional
  public void correctLoss(UUID earlierId, NewLoss loss, String reason) {
    LotLoss earlier = losses.findById(earlierId).orElseThrow(() -> unknown("loss"));
    Lot lot = locked(earlier.lotId());
    refuseReplaced(losses.existsBySupersedesId(earlierId));
    refuseTomorrow(loss.on());
    LotLoss made = new LotLoss(lot, loss, recorder.by(loss.personId()));
    refuseMoreThanThere(lot, loss.number() - earlier.number(), "more lost");
    losses.save(made.insteadOf(earlierId, reason));
  }

  /**
   * Keeps plants that left the lot.
   *
   * @throws Refused when it is impossible in itself or more than stand in the lot
   */
  @Transactional
  public void letGo(UUID lotId, NewOutgoing out) {
    Lot lot = locked(lotId);
    refuseTomorrow(out.on());
    LotOutgoing made = new LotOutgoing(lot, out, recorder.by(out.personId()));
    String what =
        switch (out.way()) {
          case SHIFTED -> "to shift";
          case DISPOSED -> "disposed of";
          case TRANSFERRED -> "given away";
        };
    refuseMoreThanThere(lot, out.number(), what);
    Check.that()
        .holds(
            outgoings.ofDay(lotId, out.on()).stream().noneMatch(made::saysTheSame),
            "number",
            "The very same is on record. If it happened twice, say under purpose what differs.")
        .orRefuse();
    outgoings.save(made);
  }

  /** The lot, held until the transaction ends. */
  Lot locked(UUID lotId) {
    return lots.locked(lotId).orElseThrow(() -> unknown("lot"));
  }

  Lot known(UUID lotId) {
    return lots.findById(lotId).orElseThrow(() -> unknown("lot"));
  }

  private void askAbout(Lot lot, NewCount count, @Nullable Checked checked, Recorded recorded) {
    for (String question : contradictions(lot, count, 0)) {
      Doubt doubt = ask(lot, count.on(), question, recorded);
      if (checked != null) {
        doubt.answer(checked.checked(), recorded);
      }
    }
  }

  private List<String> contradictions(Lot lot, NewCount count, int dead) {
    List<String> found = new ArrayList<>();
    counts
        .lastBefore(lot.unitId(), count.on())
        .filter(last -> count.alive() > last.alive())
        .ifPresent(
            last ->
                found.add(
                    "%d alive, %d at the count of %s: where do the others come from?"
                        .formatted(count.alive(), last.alive(), Measures.day(last.onDate()))));
    Ledger ledger = lots.ledger(lot.unitId(), count.on());
    if (ledger.missing(count.alive() + dead) != 0) {
      found.add(
          "%d alive, but the records leave %d of %d potted (%d lost, %d disposed of, %d given away, %d shifted)."
              .formatted(
                  count.alive(),
                  ledger.alive() - dead,
                  ledger.potted(),
                  ledger.lost() + dead,
                  ledger.disposed(),
                  ledger.transferred(),
                  ledger.shifted()));
    }
    return found;
  }

  private Doubt ask(Lot lot, LocalDate on, String question, Recorded recorded) {
    return doubts.save(new Doubt(lot.unitId(), on, question, recorded));
  }

  private void refuseMoreThanThere(Lot lot, int number, String what) {
    long there = lots.ledger(lot.unitId(), EVER).alive();
    if (number > there) {
      throw new Refused("number", "%d %s, %d in the lot.".formatted(number, what, there));
    }
  }

  private void refuseTomorrow(LocalDate day) {
    if (day.isAfter(LocalDate.now(clock))) {
      throw new Refused(
          "on", "%s lies ahead; records are of what was seen.".formatted(Measures.day(day)));
    }
  }

  private static void refuseReplaced(boolean replaced) {
    if (replaced) {
      throw new Refused("supersedeReason", "This record was replaced before.");
    }
  }

  private static Refused unknown(String what) {
    return new Refused(what, "This %s is not on record.".formatted(what));
  }
}
