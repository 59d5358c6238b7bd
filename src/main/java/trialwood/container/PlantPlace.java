package trialwood.container;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/** The lot a numbered plant stands in from a day on, until the next place. */
@Entity
public class PlantPlace extends Fact {

  private UUID plantId;
  private UUID lotId;
  private LocalDate fromDate;

  PlantPlace(UUID plantId, Lot lot, LocalDate fromDate, Recorded recorded) {
    super(recorded);
    this.plantId = plantId;
    this.lotId = lot.unitId();
    this.fromDate = fromDate;
    lot.since(fromDate).orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected PlantPlace() {}

  public UUID plantId() {
    return plantId;
  }

  public UUID lotId() {
    return lotId;
  }

  public LocalDate fromDate() {
    return fromDate;
  }
}
