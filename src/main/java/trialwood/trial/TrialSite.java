package trialwood.trial;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/** A site at which a trial stands, from the day it was planted there. */
@Entity
public class TrialSite {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID trialId;
  private UUID siteId;
  private LocalDate plantedOn;

  TrialSite(UUID trialId, UUID siteId, LocalDate plantedOn) {
    this.trialId = trialId;
    this.siteId = siteId;
    this.plantedOn = plantedOn;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrialSite() {}

  public @Nullable UUID id() {
    return id;
  }

  public UUID trialId() {
    return trialId;
  }

  public UUID siteId() {
    return siteId;
  }

  public LocalDate plantedOn() {
    return plantedOn;
  }
}
