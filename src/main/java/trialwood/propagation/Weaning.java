package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;
import trialwood.web.Measures;

/** How the rooted cuttings of a tray live without mist. */
@Entity
public class Weaning extends CorrectableFact {

  private UUID trayId;
  private LocalDate lastMist;
  private LocalDate onDate;
  private int alive;
  private @Nullable Integer wilted;
  private @Nullable Integer shock;
  private @Nullable String note;

  /**
   * @param count the final count that stands; only rooted cuttings come off the mist
   */
  Weaning(Tray tray, FinalCount count, NewWeaning said, Recorded recorded) {
    super(recorded);
    this.trayId = count.trayId();
    this.lastMist = said.lastMist();
    this.onDate = said.on();
    this.alive = said.alive();
    this.wilted = said.wilted();
    this.shock = said.shock();
    this.note = said.note();
    Check.that()
        .holds(
            !lastMist.isBefore(tray.stuckOn()),
            "lastMist",
            "The tray was stuck later, on %s.".formatted(Measures.day(tray.stuckOn())))
        .holds(!onDate.isBefore(lastMist), "on", "This is before the last mist.")
        .holds(alive >= 0, "alive", "Counts start at 0.")
        .holds(
            alive <= count.rooted(),
            "alive",
            "%d alive, but the final count left %d rooted.".formatted(alive, count.rooted()))
        .holds(
            wilted == null || (wilted >= 0 && wilted <= alive),
            "wilted",
            "No more can wilt than are alive.")
        .holds(
            shock == null || (shock >= 0 && shock <= alive),
            "shock",
            "No more can show shock than are alive.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Weaning() {}

  Weaning insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID trayId() {
    return trayId;
  }

  public LocalDate lastMist() {
    return lastMist;
  }

  public LocalDate onDate() {
    return onDate;
  }

  /** Days off the mist. */
  public int daysOff() {
    return Math.toIntExact(onDate.toEpochDay() - lastMist.toEpochDay());
  }

  public int alive() {
    return alive;
  }

  public @Nullable Integer wilted() {
    return wilted;
  }

  public @Nullable Integer shock() {
    return shock;
  }

  public @Nullable String note() {
    return note;
  }
}
