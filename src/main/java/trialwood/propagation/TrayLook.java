package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;
import trialwood.web.Measures;

/** An interim look: a few plugs lifted on a day. It is a sample and is kept as one. */
@Entity
public class TrayLook extends CorrectableFact {

  private UUID trayId;
  private LocalDate onDate;
  private int lifted;
  private int rooted;
  private int alive;
  private int deadRemoved;
  private @Nullable String note;

  /**
   * @param held what the tray holds by that day: the stuck, with those that came and without those
   *     that went to other trays
   * @param gone cuttings thrown out or taken out of the tray before
   * @throws trialwood.record.Refused when the numbers are impossible for this tray
   */
  TrayLook(Tray tray, int held, NewLook said, int gone, Recorded recorded) {
    super(recorded);
    this.trayId = tray.unitId();
    this.onDate = said.on();
    this.lifted = said.lifted();
    this.rooted = said.rooted();
    this.alive = said.alive();
    this.deadRemoved = said.deadRemoved();
    this.note = said.note();
    Check.that()
        .holds(
            !onDate.isBefore(tray.stuckOn()),
            "on",
            "The tray was stuck later, on %s.".formatted(Measures.day(tray.stuckOn())))
        .holds(rooted <= lifted, "rooted", "%d rooted, but %d lifted.".formatted(rooted, lifted))
        .holds(lifted <= alive, "lifted", "%d lifted, but %d alive.".formatted(lifted, alive))
        .holds(alive <= held, "alive", "%d alive, but %s.".formatted(alive, tray.holding(held)))
        .holds(
            alive > held || alive + deadRemoved + gone <= held,
            alive + gone > held ? "alive" : "deadRemoved",
            gone == 0
                ? "%d alive and %d dead, but %s.".formatted(alive, deadRemoved, tray.holding(held))
                : "%d alive and %d dead, but %d of the %s left the tray before."
                    .formatted(alive, deadRemoved, gone, tray.holding(held)))
        .holds(rooted >= 0 && lifted >= 0 && deadRemoved >= 0, "lifted", "Counts start at 0.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrayLook() {}

  TrayLook insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID trayId() {
    return trayId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int lifted() {
    return lifted;
  }

  public int rooted() {
    return rooted;
  }

  public int alive() {
    return alive;
  }

  public int deadRemoved() {
    return deadRemoved;
  }

  public @Nullable String note() {
    return note;
  }
}
