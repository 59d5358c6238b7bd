package trialwood.trial;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/**
 * The plants of one entry in one block. It is a unit and bears the unit's id; which accession
 * stands in it is what the unit's ties say, the entry is what was meant to be planted.
 */
@Entity
public class Plot implements Persistable<UUID> {

  @Id private UUID unitId;
  private UUID trialSiteId;
  private UUID entryId;
  private int block;
  private @Nullable Integer rowNumber;
  private @Nullable Integer columnNumber;
  private int plants;
  @Transient private boolean stored;

  Plot(UUID unitId, UUID trialSiteId, UUID entryId, GivenPlot given) {
    this.unitId = unitId;
    this.trialSiteId = trialSiteId;
    this.entryId = entryId;
    this.block = given.block();
    this.rowNumber = given.row();
    this.columnNumber = given.column();
    this.plants = given.plants();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Plot() {}

  public UUID unitId() {
    return unitId;
  }

  public UUID trialSiteId() {
    return trialSiteId;
  }

  public UUID entryId() {
    return entryId;
  }

  public int block() {
    return block;
  }

  public @Nullable Integer rowNumber() {
    return rowNumber;
  }

  public @Nullable Integer columnNumber() {
    return columnNumber;
  }

  public int plants() {
    return plants;
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
