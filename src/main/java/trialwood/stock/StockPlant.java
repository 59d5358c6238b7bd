package trialwood.stock;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/** A plant kept for cuttings. Its label is its unit's, and a tie says whose plant it is. */
@Entity
public class StockPlant implements Persistable<UUID> {

  @Id private UUID unitId;
  private int number;
  private LocalDate sinceDate;
  private String place;
  private @Nullable UUID originBatchId;
  private @Nullable UUID originUnitId;
  private @Nullable String note;
  @Embedded private Recorded recorded;
  @Transient private boolean stored;

  StockPlant(UUID unitId, NewStockPlant said, Recorded recorded) {
    this.unitId = unitId;
    this.number = said.number();
    this.sinceDate = said.since();
    this.place = said.place().strip();
    this.originBatchId = said.originBatchId();
    this.originUnitId = said.originUnitId();
    this.note = said.note();
    this.recorded = recorded;
    Check.that()
        .holds(number > 0, "number", "Stock plants are numbered from 1.")
        .holds(!place.isEmpty(), "place", "Say where it stands.")
        .fits(place, 80, "place")
        .fits(note, 2000, "note")
        .holds(
            originBatchId == null || originUnitId == null,
            "origin",
            "It came from a batch or from a plant, not from both.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected StockPlant() {}

  public UUID unitId() {
    return unitId;
  }

  public int number() {
    return number;
  }

  /** The day from which it is kept for cuttings. */
  public LocalDate sinceDate() {
    return sinceDate;
  }

  /** Where it stood at first. */
  public String place() {
    return place;
  }

  @Override
  public UUID getId() {
    return unitId;
  }

  @Override
  public boolean isNew() {
    return !stored;
  }

  @PostLoad
  @PostPersist
  void markStored() {
    stored = true;
  }
}
