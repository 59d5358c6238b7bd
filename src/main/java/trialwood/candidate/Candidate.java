package trialwood.candidate;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import trialwood.record.Check;
import trialwood.record.Refused;

/** An accession on its way from field tag to release. Only a gate decision moves it. */
@Entity
public class Candidate implements Persistable<UUID> {

  @Id private UUID accessionId;
  @Version private int version;

  @Enumerated(EnumType.STRING)
  private Stage stage = Stage.FIELD;

  @Enumerated(EnumType.STRING)
  private Standing standing = Standing.ACTIVE;

  private @Nullable LocalDate holdUntil;
  @Transient private boolean stored;

  /** A plant that was tagged in the field. */
  public Candidate(UUID accessionId) {
    this.accessionId = accessionId;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Candidate() {}

  /** Goes through the gate of the given stage. */
  public void advanceFrom(Stage gate) {
    standsAt(gate);
    stage = gate.next();
    standing = stage == Stage.RELEASED ? Standing.RELEASED : Standing.ACTIVE;
    holdUntil = null;
  }

  /** Waits at the gate of the given stage until it is looked at again. */
  public void holdAt(Stage gate, LocalDate until) {
    standsAt(gate);
    standing = Standing.ON_HOLD;
    holdUntil = until;
  }

  /** Ends at the gate of the given stage. */
  public void discardAt(Stage gate) {
    standsAt(gate);
    standing = Standing.DISCARDED;
    holdUntil = null;
  }

  /** Takes a discard back; the reason is an event of its own. */
  public void reopen() {
    Check.that()
        .holds(
            standing == Standing.DISCARDED, "standing", "Only a discarded candidate is reopened.")
        .orRefuse();
    standing = Standing.ACTIVE;
  }

  private void standsAt(Stage gate) {
    if (standing == Standing.DISCARDED) {
      throw new Refused("choice", "The candidate was discarded; reopen it first.");
    }
    if (stage != gate) {
      throw new Refused(
          "choice",
          "The candidate stands at the gate of %s, not of %s."
              .formatted(stage.word(), gate.word()));
    }
  }

  public UUID accessionId() {
    return accessionId;
  }

  public int version() {
    return version;
  }

  public Stage stage() {
    return stage;
  }

  public Standing standing() {
    return standing;
  }

  public @Nullable LocalDate holdUntil() {
    return holdUntil;
  }

  @Override
  public UUID getId() {
    return accessionId;
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
