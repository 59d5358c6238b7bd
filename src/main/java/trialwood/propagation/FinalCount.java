package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;
import trialwood.web.Measures;

/**
 * The count that closes a tray: what was stuck is rooted, alive without roots, dead or taken out.
 */
@Entity
public class FinalCount extends Fact {

  private UUID trayId;
  private LocalDate onDate;
  private int rooted;
  private int aliveWithoutRoots;
  private int dead;
  private int takenOut;
  private int takenOutRooted;
  private @Nullable Integer rootScore;
  private @Nullable String note;
  private @Nullable String supersedeReason;

  /**
   * @param held what the tray holds by that day: the stuck, with those that came and without those
   *     that went to other trays
   * @param taken what was taken out of the tray before, as recorded
   * @throws trialwood.record.Refused when the four do not add up to what it holds
   */
  FinalCount(Tray tray, int held, NewFinalCount said, TakenSoFar taken, Recorded recorded) {
    super(recorded);
    this.trayId = tray.unitId();
    this.onDate = said.on();
    this.rooted = said.rooted();
    this.aliveWithoutRoots = said.aliveWithoutRoots();
    this.dead = said.dead();
    this.takenOut = said.takenOut();
    this.takenOutRooted = taken.rooted();
    this.rootScore = said.rootScore();
    this.note = said.note();
    this.supersedeReason = said.settles();
    Check.that()
        .holds(
            !onDate.isBefore(tray.stuckOn()),
            "on",
            "The tray was stuck later, on %s.".formatted(Measures.day(tray.stuckOn())))
        .holds(
            rooted >= 0 && aliveWithoutRoots >= 0 && dead >= 0 && takenOut >= 0,
            "rooted",
            "Counts start at 0.")
        .holds(rooted <= held, "rooted", "%d rooted, %s.".formatted(rooted, tray.holding(held)))
        .holds(
            said.sum() == held,
            "dead",
            "%d recorded, %s.%s"
                .formatted(
                    said.sum(),
                    tray.holding(held),
                    said.sum() < held
                        ? " %d lost or destroyed? Say which: dead, or taken out before."
                            .formatted(held - said.sum())
                        : ""))
        .holds(
            takenOut == taken.number(),
            "takenOut",
            "%d taken out are on record, this says %d. Record what was taken out first."
                .formatted(taken.number(), takenOut))
        .holds(
            rootScore == null || (rootScore >= 0 && rootScore <= 5),
            "rootScore",
            "The root score runs from 0 to 5.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected FinalCount() {}

  /** Whether it says the same as another, so that a second sending need not be kept. */
  boolean saysTheSameAs(FinalCount other) {
    return onDate.equals(other.onDate)
        && rooted == other.rooted
        && aliveWithoutRoots == other.aliveWithoutRoots
        && dead == other.dead
        && takenOut == other.takenOut;
  }

  /** All that rooted of what was stuck, those taken out with roots among them. */
  public int rootedOfStuck() {
    return rooted + takenOutRooted;
  }

  /** All that the tray held when it was closed. */
  int held() {
    return rooted + aliveWithoutRoots + dead + takenOut;
  }

  public UUID trayId() {
    return trayId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int rooted() {
    return rooted;
  }

  public int aliveWithoutRoots() {
    return aliveWithoutRoots;
  }

  public int dead() {
    return dead;
  }

  public int takenOut() {
    return takenOut;
  }

  public int takenOutRooted() {
    return takenOutRooted;
  }

  public @Nullable Integer rootScore() {
    return rootScore;
  }

  public @Nullable String note() {
    return note;
  }

  /** Why it supersedes earlier counts of the tray, where it does. */
  public @Nullable String supersedeReason() {
    return supersedeReason;
  }
}
