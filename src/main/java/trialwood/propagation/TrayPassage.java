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
 * Cuttings that went from one tray into another of the same batch. From that day each tray counts
 * for what it holds, so that no cutting is ever counted twice.
 */
@Entity
public class TrayPassage extends Fact {

  private UUID fromTrayId;
  private UUID toTrayId;
  private LocalDate onDate;
  private int number;
  private boolean begins;
  private @Nullable String note;

  /**
   * @param present cuttings in the tray that gives them, that day
   * @param begins whether the other tray began with these
   */
  TrayPassage(
      Tray from,
      Tray to,
      LocalDate onDate,
      int number,
      int present,
      boolean begins,
      @Nullable String note,
      Recorded recorded) {
    super(recorded);
    this.fromTrayId = from.unitId();
    this.toTrayId = to.unitId();
    this.onDate = onDate;
    this.number = number;
    this.begins = begins;
    this.note = note;
    Check.that()
        .holds(number >= 1, "number", "Say how many cuttings were moved.")
        .holds(
            number <= present,
            "number",
            "%d to be moved, but only %d are in the tray.".formatted(number, present))
        .holds(
            !onDate.isBefore(from.stuckOn()),
            "on",
            "The tray was stuck later, on %s.".formatted(Measures.day(from.stuckOn())))
        .holds(!fromTrayId.equals(toTrayId), "from", "This is the same tray.")
        .holds(
            from.batchId().equals(to.batchId()),
            "from",
            "The two trays are of different batches. Keep them apart, or nobody can tell how each"
                + " batch rooted.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrayPassage() {}

  public UUID fromTrayId() {
    return fromTrayId;
  }

  public UUID toTrayId() {
    return toTrayId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int number() {
    return number;
  }

  public boolean begins() {
    return begins;
  }

  public @Nullable String note() {
    return note;
  }
}
