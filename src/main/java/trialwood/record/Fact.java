package trialwood.record;

import jakarta.persistence.Embedded;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/** A record that is never overwritten. */
@MappedSuperclass
public abstract class Fact {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Embedded private Recorded recorded;

  protected Fact(Recorded recorded) {
    this.recorded = recorded;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Fact() {}

  /** Given when the record is stored. */
  public @Nullable UUID id() {
    return id;
  }

  public Recorded recorded() {
    return recorded;
  }
}
