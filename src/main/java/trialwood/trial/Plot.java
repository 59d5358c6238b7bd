package trialwood.trial;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import trialwood.record.Check;

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

  Plot(
      UUID unitId,
      UUID trialSiteId,
      UUID entryId,
      int block,
      @Nullable Integer row,
      @Nullable Integer column,
      int plants) {
    this.unitId = unitId;
    this.trialSiteId = trialSiteId;
    this.entryId = entryId;
    this.block = block;
    this.rowNumber = row;
    this.columnNumber = column;
    this.plants = plants;
    Check.that()
        .holds(block >= 1, "block", "Blocks are numbered from 1.")
        .holds(row == null || row >= 1, "row", "Rows are numbered from 1.")
        .holds(column == null || column >= 1, "column", "Columns are numbered from 1.")
        .holds(plants >= 1, "plants", "A plot has at least one plant.")
        .orRefuse();
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
