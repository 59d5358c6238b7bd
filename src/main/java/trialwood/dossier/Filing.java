package trialwood.dossier;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** An application that was filed on a route. */
@Entity
public class Filing extends CorrectableFact {

  private UUID accessionId;
  private UUID routeId;
  private LocalDate onDate;
  private @Nullable String number;
  private @Nullable String note;

  /**
   * @param number file number, the nursery's own or the office's
   */
  public Filing(
      UUID accessionId,
      UUID routeId,
      LocalDate onDate,
      @Nullable String number,
      @Nullable String note,
      Recorded recorded) {
    super(recorded);
    this.accessionId = accessionId;
    this.routeId = routeId;
    this.onDate = onDate;
    this.number = number;
    this.note = note;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Filing() {}

  public UUID accessionId() {
    return accessionId;
  }

  public UUID routeId() {
    return routeId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public @Nullable String number() {
    return number;
  }

  public @Nullable String note() {
    return note;
  }
}
