package trialwood.dossier;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.Objects;
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
  private boolean struckOut;

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

  /** Whether it never was and only stands here to say so. */
  public boolean isStruckOut() {
    return struckOut;
  }

  /**
   * Takes the place of an earlier record.
   *
   * @throws trialwood.record.Refused without a reason
   */
  public Filing insteadOf(Filing earlier, String reason) {
    supersede(Objects.requireNonNull(earlier.id()), reason);
    return this;
  }

  /**
   * The record that says that this one never was.
   *
   * @throws trialwood.record.Refused without a reason
   */
  public Filing struckOut(String reason, Recorded recorded) {
    Filing struck = new Filing(accessionId, routeId, onDate, number, note, recorded);
    struck.struckOut = true;
    return struck.insteadOf(this, reason);
  }
}
