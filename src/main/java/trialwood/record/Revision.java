package trialwood.record;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import org.hibernate.envers.RevisionEntity;
import org.hibernate.envers.RevisionListener;
import org.hibernate.envers.RevisionNumber;
import org.hibernate.envers.RevisionTimestamp;

/** One change to hand-edited master data: when, and from which account. */
@Entity
@RevisionEntity(Revision.Signature.class)
public class Revision {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "revision_seq")
  @SequenceGenerator(name = "revision_seq", allocationSize = 1)
  @RevisionNumber
  private long id;

  @RevisionTimestamp private Instant at;
  private String username;

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Revision() {}

  public Instant at() {
    return at;
  }

  public String username() {
    return username;
  }

  /** Signs a new revision. */
  public static class Signature implements RevisionListener {

    @Override
    public void newRevision(Object revision) {
      ((Revision) revision).username = Recorder.account();
    }
  }
}
