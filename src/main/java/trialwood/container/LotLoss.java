package trialwood.container;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** Plants of a lot that died, and of what. */
@Entity
public class LotLoss extends CorrectableFact {

  private UUID lotId;
  private LocalDate onDate;
  private int number;
  private String reason;

  LotLoss(Lot lot, NewLoss loss, Recorded recorded) {
    super(recorded);
    this.lotId = lot.unitId();
    this.onDate = loss.on();
    this.number = loss.number();
    this.reason = loss.reason().strip();
    lot.since(onDate)
        .holds(
            number > 0, "number", "A loss is at least one plant; this says %d.".formatted(number))
        .holds(
            !reason.isEmpty() && reason.length() <= 300,
            "reason",
            "Say what they died of, as far as you can see, in up to 300 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotLoss() {}

  LotLoss insteadOf(UUID earlier, String why) {
    supersede(earlier, why);
    return this;
  }

  public UUID lotId() {
    return lotId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public int number() {
    return number;
  }

  public String reason() {
    return reason;
  }
}
