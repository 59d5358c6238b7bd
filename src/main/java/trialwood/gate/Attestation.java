package trialwood.gate;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** A person says of a candidate what no record can compute. */
@Entity
public class Attestation extends CorrectableFact {

  private UUID accessionId;
  private String criterion;
  private LocalDate onDate;
  private boolean holds;
  private @Nullable LocalDate expiresOn;
  private String note;

  /**
   * @param criterion the code of the criterion it answers
   * @param expiresOn first day on which it no longer counts
   * @param note what was seen, or where the paper lies
   */
  public Attestation(
      UUID accessionId,
      String criterion,
      LocalDate onDate,
      boolean holds,
      @Nullable LocalDate expiresOn,
      String note,
      Recorded recorded) {
    super(recorded);
    this.accessionId = accessionId;
    this.criterion = criterion;
    this.onDate = onDate;
    this.holds = holds;
    this.expiresOn = expiresOn;
    this.note = note.strip();
    Check.that()
        .holds(
            expiresOn == null || expiresOn.isAfter(onDate),
            "expiresOn",
            "It expires before it was said.")
        .holds(
            !this.note.isEmpty() && this.note.length() <= 300,
            "note",
            "Say what was seen, or where the paper lies, in up to 300 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Attestation() {}

  public boolean isExpired(LocalDate day) {
    return expiresOn != null && !day.isBefore(expiresOn);
  }

  public UUID accessionId() {
    return accessionId;
  }

  public String criterion() {
    return criterion;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public boolean holds() {
    return holds;
  }

  public @Nullable LocalDate expiresOn() {
    return expiresOn;
  }

  public String note() {
    return note;
  }
}
