package trialwood.propagation;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;
import trialwood.web.Measures;

/** Cuttings that left the tray before its final count: in what state, and where they went. */
@Entity
public class TakenOut extends CorrectableFact {

  /** Where they went. */
  public enum Fate {
    POTTED,
    SAMPLED,
    ROTTED,
    GIVEN_AWAY,
    MOVED;

    /** As words on a page and in a file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private UUID trayId;
  private LocalDate onDate;
  private int number;
  private boolean rooted;

  @Enumerated(EnumType.STRING)
  private Fate fate;

  private @Nullable String note;

  TakenOut(Tray tray, int held, NewTakenOut said, Recorded recorded) {
    super(recorded);
    this.trayId = tray.unitId();
    this.onDate = said.on();
    this.number = said.number();
    this.rooted = said.rooted();
    this.fate = said.fate();
    this.note = said.note();
    Check.that()
        .holds(number >= 1, "number", "Say how many cuttings were taken out.")
        .holds(
            number <= held, "number", "%d taken out, but %s.".formatted(number, tray.holding(held)))
        .holds(!(rooted && fate == Fate.ROTTED), "fate", "A rotted cutting is not a rooted one.")
        .holds(
            !onDate.isBefore(tray.stuckOn()),
            "on",
            "The tray was stuck later, on %s.".formatted(Measures.day(tray.stuckOn())))
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TakenOut() {}

  TakenOut insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID trayId() {
    return trayId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int number() {
    return number;
  }

  /** Rooted ones count as rooted, whatever became of them. */
  public boolean isRooted() {
    return rooted;
  }

  public Fate fate() {
    return fate;
  }

  public @Nullable String note() {
    return note;
  }
}
