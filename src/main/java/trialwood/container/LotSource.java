package trialwood.container;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** How many plants of a lot came out of one tray, or out of a lot in smaller pots. */
@Entity
public class LotSource {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID lotId;
  private UUID sourceId;
  private int number;

  LotSource(UUID lotId, UUID sourceId, int number) {
    this.lotId = lotId;
    this.sourceId = sourceId;
    this.number = number;
    Check.that()
        .holds(number > 0, "number", "At least one plant is taken; this says %d.".formatted(number))
        .holds(!lotId.equals(sourceId), "source", "A lot is not its own source.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotSource() {}

  public UUID lotId() {
    return lotId;
  }

  public UUID sourceId() {
    return sourceId;
  }

  public int number() {
    return number;
  }
}
