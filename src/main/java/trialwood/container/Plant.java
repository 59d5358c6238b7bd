package trialwood.container;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.time.Instant;
import java.util.UUID;
import org.springframework.data.domain.Persistable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/** One plant with a number of its own, kept for life. Its label is its unit's. */
@Entity
public class Plant implements Persistable<UUID> {

  @Id private UUID unitId;
  private int number;
  private String account;
  private Instant recordedAt;
  @Transient private boolean stored;

  Plant(UUID unitId, int number, Recorded recorded) {
    this.unitId = unitId;
    this.number = number;
    this.account = recorded.account();
    this.recordedAt = recorded.recordedAt();
    Check.that()
        .holds(number > 0, "number", "Plants are numbered from 1; this says %d.".formatted(number))
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Plant() {}

  public UUID unitId() {
    return unitId;
  }

  public int number() {
    return number;
  }

  public String account() {
    return account;
  }

  public Instant recordedAt() {
    return recordedAt;
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
