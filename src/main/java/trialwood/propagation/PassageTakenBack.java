package trialwood.propagation;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.util.Objects;
import java.util.UUID;
import org.springframework.data.domain.Persistable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/** Says that cuttings did not go into the other tray after all; both records stay readable. */
@Entity
public class PassageTakenBack implements Persistable<UUID> {

  @Id private UUID passageId;
  private String reason;
  @Embedded private Recorded recorded;
  @Transient private boolean stored;

  PassageTakenBack(TrayPassage passage, String reason, Recorded recorded) {
    this.passageId = Objects.requireNonNull(passage.id());
    this.reason = reason.strip();
    this.recorded = recorded;
    Check.that().holds(!this.reason.isEmpty(), "reason", "Say why it is taken back.").orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected PassageTakenBack() {}

  public String reason() {
    return reason;
  }

  public Recorded recorded() {
    return recorded;
  }

  @Override
  public UUID getId() {
    return passageId;
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
