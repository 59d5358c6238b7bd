package trialwood.propagation;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.util.UUID;
import org.springframework.data.domain.Persistable;
import trialwood.record.Recorded;

/** The bench plan of a run, by the seed it was drawn from; its places are rows of their own. */
@Entity
public class BenchPlan implements Persistable<UUID> {

  @Id private UUID runId;
  private long seed;
  @Embedded private Recorded recorded;
  @Transient private boolean stored;

  public BenchPlan(UUID runId, long seed, Recorded recorded) {
    this.runId = runId;
    this.seed = seed;
    this.recorded = recorded;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected BenchPlan() {}

  public UUID runId() {
    return runId;
  }

  public long seed() {
    return seed;
  }

  public Recorded recorded() {
    return recorded;
  }

  @Override
  public UUID getId() {
    return runId;
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
