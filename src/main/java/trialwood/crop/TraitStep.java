package trialwood.crop;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** One step of a scored trait's scale, in words; scales have versions, since wordings change. */
@Entity
public class TraitStep {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID traitId;
  private int step;
  private String meaning;
  private String scale;

  public TraitStep(UUID traitId, int step, String meaning, String scale) {
    this.traitId = traitId;
    this.step = step;
    this.meaning = meaning.strip();
    this.scale = scale.strip();
    Check.that()
        .holds(!this.meaning.isEmpty(), "meaning", "Describe every step of the scale.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TraitStep() {}

  public @Nullable UUID id() {
    return id;
  }

  public UUID traitId() {
    return traitId;
  }

  public int step() {
    return step;
  }

  public String meaning() {
    return meaning;
  }

  public String scale() {
    return scale;
  }
}
