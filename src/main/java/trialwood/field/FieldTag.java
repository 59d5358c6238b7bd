package trialwood.field;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/** The mark that makes a candidate: where the plant stands, when it was chosen and for what. */
@Entity
public class FieldTag extends Fact {

  private UUID populationId;
  private int rowNumber;
  private int positionNumber;
  private UUID unitId;
  private UUID accessionId;
  private LocalDate taggedOn;
  private String seen;

  /** One live tag per position: unique while it hangs, empty once it is taken down. */
  private @Nullable String livePosition;

  FieldTag(
      UUID populationId,
      int rowNumber,
      int positionNumber,
      String position,
      UUID unitId,
      UUID accessionId,
      LocalDate taggedOn,
      String seen,
      Recorded recorded) {
    super(recorded);
    this.populationId = populationId;
    this.rowNumber = rowNumber;
    this.positionNumber = positionNumber;
    this.livePosition = position;
    this.unitId = unitId;
    this.accessionId = accessionId;
    this.taggedOn = taggedOn;
    this.seen = seen.strip();
    Check.that()
        .holds(
            !this.seen.isEmpty() && this.seen.length() <= 300,
            "seen",
            "Say in a few words what was seen, up to 300 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected FieldTag() {}

  public UUID populationId() {
    return populationId;
  }

  public int rowNumber() {
    return rowNumber;
  }

  public int positionNumber() {
    return positionNumber;
  }

  public UUID unitId() {
    return unitId;
  }

  public UUID accessionId() {
    return accessionId;
  }

  public LocalDate taggedOn() {
    return taggedOn;
  }

  public String seen() {
    return seen;
  }

  public @Nullable String livePosition() {
    return livePosition;
  }
}
