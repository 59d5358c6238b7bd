package trialwood.container;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** Plants that left a lot: into larger pots, to somebody, or onto the heap. */
@Entity
public class LotOutgoing extends CorrectableFact {

  private UUID lotId;
  private LocalDate onDate;
  private int number;

  @Enumerated(EnumType.STRING)
  private Way way;

  private @Nullable String toWhom;
  private @Nullable String agreement;
  private @Nullable String purpose;

  LotOutgoing(Lot lot, NewOutgoing out, Recorded recorded) {
    super(recorded);
    this.lotId = lot.unitId();
    this.onDate = out.on();
    this.number = out.number();
    this.way = out.way();
    this.toWhom = out.toWhom();
    this.agreement = out.agreement();
    this.purpose = out.purpose();
    lot.since(onDate)
        .holds(number > 0, "number", "At least one plant leaves; this says %d.".formatted(number))
        .holds(
            way != Way.TRANSFERRED || toWhom != null || purpose != null,
            "to_whom",
            "Say who has the plants now, or what they went for.")
        .holds(
            toWhom == null || toWhom.length() <= 120, "to_whom", "Name them in up to 120 letters.")
        .holds(
            agreement == null || agreement.length() <= 60,
            "agreement",
            "Name the agreement in up to 60 letters.")
        .holds(
            purpose == null || purpose.length() <= 120,
            "purpose",
            "Say what for in up to 120 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotOutgoing() {}

  public UUID lotId() {
    return lotId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int number() {
    return number;
  }

  public Way way() {
    return way;
  }

  public @Nullable String toWhom() {
    return toWhom;
  }

  public @Nullable String agreement() {
    return agreement;
  }

  public @Nullable String purpose() {
    return purpose;
  }

  /** Whether nothing tells the two apart. */
  boolean saysTheSame(LotOutgoing other) {
    return lotId.equals(other.lotId)
        && onDate.equals(other.onDate)
        && number == other.number
        && way == other.way
        && Objects.equals(toWhom, other.toWhom)
        && Objects.equals(agreement, other.agreement)
        && Objects.equals(purpose, other.purpose);
  }
}
