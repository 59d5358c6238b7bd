package trialwood.unit;

import jakarta.persistence.Entity;
import jakarta.persistence.EntityListeners;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CodeKey;

/** A physical thing with a label: records hang on it, and ties say whose plant it is. */
@Entity
@EntityListeners(ShortCodes.class)
public class Unit {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Enumerated(EnumType.STRING)
  private UnitKind kind;

  private String label;
  private String labelKey;
  private @Nullable UUID siteId;

  /**
   * @param label as it is written on the thing; a position's alone bears slashes, P18/12/33, and
   *     has no page of its own
   */
  public Unit(UnitKind kind, String label, @Nullable UUID siteId) {
    this.kind = kind;
    this.label = label.strip();
    this.labelKey = CodeKey.of(label);
    this.siteId = siteId;
    Check.that()
        .holds(
            !labelKey.isEmpty() && this.label.length() <= 60,
            "label",
            "A label has 1 to 60 letters, figures and dashes.")
        .holds(
            kind == UnitKind.POSITION || this.label.isEmpty() || CodeKey.isPlain(this.label),
            "label",
            CodeKey.PLAIN_RULE)
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Unit() {}

  public @Nullable UUID id() {
    return id;
  }

  public UnitKind kind() {
    return kind;
  }

  public String label() {
    return label;
  }

  public @Nullable UUID siteId() {
    return siteId;
  }
}
