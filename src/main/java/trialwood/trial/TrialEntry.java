package trialwood.trial;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/** An accession that stands in a trial, and what for. */
@Entity
public class TrialEntry {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID trialId;
  private UUID accessionId;

  @Enumerated(EnumType.STRING)
  private EntryRole role;

  TrialEntry(UUID trialId, UUID accessionId, EntryRole role) {
    this.trialId = trialId;
    this.accessionId = accessionId;
    this.role = role;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrialEntry() {}

  public @Nullable UUID id() {
    return id;
  }

  public UUID trialId() {
    return trialId;
  }

  public UUID accessionId() {
    return accessionId;
  }

  public EntryRole role() {
    return role;
  }
}
