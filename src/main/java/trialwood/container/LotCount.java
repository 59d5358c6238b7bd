package trialwood.container;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** What stood alive in a lot on a day, and how much of it could have been sold. */
@Entity
public class LotCount extends CorrectableFact {

  private UUID lotId;
  private LocalDate onDate;
  private int alive;
  private @Nullable Integer saleable;
  private @Nullable String note;

  LotCount(Lot lot, NewCount count, Recorded recorded) {
    super(recorded);
    this.lotId = lot.unitId();
    this.onDate = count.on();
    this.alive = count.alive();
    this.saleable = count.saleable();
    this.note = count.note();
    lot.since(onDate)
        .holds(alive >= 0, "alive", "Nothing below zero can be alive.")
        .holds(
            alive <= lot.potted(), "alive", "%d alive, %d potted.".formatted(alive, lot.potted()))
        .holds(
            saleable == null || (saleable >= 0 && saleable <= alive),
            "saleable",
            "%d saleable, %d alive.".formatted(saleable, alive))
        .holds(note == null || note.length() <= 300, "note", "Keep the note under 300 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotCount() {}

  LotCount insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID lotId() {
    return lotId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int alive() {
    return alive;
  }

  public @Nullable Integer saleable() {
    return saleable;
  }

  public @Nullable String note() {
    return note;
  }
}
