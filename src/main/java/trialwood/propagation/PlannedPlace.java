package trialwood.propagation;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A place on the bench that the plan of a run keeps for one accession. */
@Entity
public class PlannedPlace {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID runId;
  private int block;
  private int place;
  private UUID accessionId;
  private int nth;

  /**
   * @param place numbered along the block's bench
   * @param nth batch of the accession in the run; 1 unless it is stuck in two ways
   */
  public PlannedPlace(UUID runId, int block, int place, UUID accessionId, int nth) {
    this.runId = runId;
    this.block = block;
    this.place = place;
    this.accessionId = accessionId;
    this.nth = nth;
    Check.that()
        .holds(block >= 1, "block", "Blocks are numbered from 1.")
        .holds(place >= 1, "place", "Places are numbered from 1.")
        .holds(nth >= 1, "nth", "Batches of an accession are numbered from 1.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected PlannedPlace() {}

  public UUID runId() {
    return runId;
  }

  public int block() {
    return block;
  }

  public int place() {
    return place;
  }

  public UUID accessionId() {
    return accessionId;
  }

  public int nth() {
    return nth;
  }
}
