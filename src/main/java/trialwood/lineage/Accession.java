package trialwood.lineage;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CodeKey;

/**
 * Anything with a code that can be propagated or used as a parent. Its parents are on record before
 * it and do not change, so that no accession can be its own ancestor.
 */
@Entity
@Audited
public class Accession {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private UUID cropId;
  private String code;
  private String codeKey;

  @Enumerated(EnumType.STRING)
  private AccessionKind kind;

  private @Nullable String talkName;
  private @Nullable String description;
  private @Nullable UUID seedParentId;
  private @Nullable UUID pollenParentId;

  @Enumerated(EnumType.STRING)
  private @Nullable Pollination pollination;

  private @Nullable String origin;
  private boolean usedAsParent;

  /**
   * @param code as it is written on labels
   * @param origin where it comes from, in words
   */
  public Accession(
      UUID cropId, String code, AccessionKind kind, Parentage parentage, @Nullable String origin) {
    this.cropId = cropId;
    this.code = code.strip();
    this.codeKey = CodeKey.of(code);
    this.kind = kind;
    this.seedParentId = parentage.seedParentId();
    this.pollenParentId = parentage.pollenParentId();
    this.pollination = parentage.pollination();
    this.origin = origin;
    Check.that()
        .holds(
            !codeKey.isEmpty() && this.code.length() <= 30,
            "accession",
            "A code has 1 to 30 letters, figures and dashes, for example C18-03.")
        .isPlain(this.code, "accession")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Accession() {}

  /** Changes what people call it and say of it. The talk name is never a denomination. */
  public void describe(@Nullable String talkName, @Nullable String description) {
    Check.that()
        .holds(
            talkName == null || talkName.length() <= 60,
            "talkName",
            "A talk name has at most 60 letters.")
        .holds(
            description == null || description.length() <= 300,
            "description",
            "Keep the description under 300 letters.")
        .orRefuse();
    this.talkName = talkName;
    this.description = description;
  }

  /** Changes what is said of where it comes from, in words. */
  public void comesFrom(@Nullable String origin) {
    Check.that().fits(origin, 300, "origin").orRefuse();
    this.origin = origin;
  }

  /** Marks it as a parent, or no longer, whatever its standing as a candidate. */
  public void useAsParent(boolean yes) {
    this.usedAsParent = yes;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public UUID cropId() {
    return cropId;
  }

  public String code() {
    return code;
  }

  public AccessionKind kind() {
    return kind;
  }

  public @Nullable String talkName() {
    return talkName;
  }

  public @Nullable String description() {
    return description;
  }

  public Parentage parentage() {
    return new Parentage(seedParentId, pollenParentId, pollination);
  }

  public @Nullable String origin() {
    return origin;
  }

  public boolean isUsedAsParent() {
    return usedAsParent;
  }
}
