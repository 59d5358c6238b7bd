package trialwood.propagation;

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

/** A tray of cuttings: the replicate of a propagation trial. */
@Entity
public class Tray implements Persistable<UUID> {

  @Id private UUID unitId;
  private UUID batchId;
  private int cells;
  private LocalDate stuckOn;
  private int stuck;
  private @Nullable String block;
  private @Nullable String place;
  @Embedded private Recorded recorded;
  @Transient private boolean stored;

  /**
   * @param block part of the bench along the mist and heat gradient
   * @param place place within the block
   */
  Tray(
      UUID unitId,
      UUID batchId,
      int cells,
      LocalDate stuckOn,
      int stuck,
      @Nullable String block,
      @Nullable String place,
      Recorded recorded) {
    this.unitId = unitId;
    this.batchId = batchId;
    this.cells = cells;
    this.stuckOn = stuckOn;
    this.stuck = stuck;
    this.block = block;
    this.place = place;
    this.recorded = recorded;
    Check.that()
        .holds(cells >= 1 && cells <= 600, "cells", "A tray has 1 to 600 cells.")
        .holds(stuck >= 1, "stuck", "At least one cutting is stuck in a tray.")
        .holds(
            stuck <= cells, "stuck", "%d stuck, but the tray has %d cells.".formatted(stuck, cells))
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Tray() {}

  /** Days since sticking. */
  public int dayOf(LocalDate date) {
    return Math.toIntExact(date.toEpochDay() - stuckOn.toEpochDay());
  }

  /** As words: 24 stuck; where cuttings went in or out since, 17 in the tray. */
  String holding(int held) {
    return held == stuck ? "%d stuck".formatted(held) : "%d in the tray".formatted(held);
  }

  public UUID unitId() {
    return unitId;
  }

  public UUID batchId() {
    return batchId;
  }

  public int cells() {
    return cells;
  }

  public LocalDate stuckOn() {
    return stuckOn;
  }

  public int stuck() {
    return stuck;
  }

  public @Nullable String block() {
    return block;
  }

  public @Nullable String place() {
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
