package trialwood.lineage;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/** An accession that serves a crop as a check. */
@Entity
public class CropCheck {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID cropId;
  private UUID accessionId;

  @Enumerated(EnumType.STRING)
  private CheckRole role;

  public CropCheck(UUID cropId, UUID accessionId, CheckRole role) {
    this.cropId = cropId;
    this.accessionId = accessionId;
    this.role = role;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected CropCheck() {}

  public @Nullable UUID id() {
    return id;
  }

  public UUID cropId() {
    return cropId;
  }

  public UUID accessionId() {
    return accessionId;
  }

  public CheckRole role() {
    return role;
  }
}
