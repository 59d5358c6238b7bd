package trialwood.record;

import jakarta.persistence.MappedSuperclass;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A fact that another may supersede with a reason; both stay readable. */
@MappedSuperclass
public abstract class CorrectableFact extends Fact {

  private @Nullable UUID supersedesId;
  private @Nullable String supersedeReason;

  protected CorrectableFact(Recorded recorded) {
    super(recorded);
  }

  /** For Hibernate. */
  protected CorrectableFact() {}

  /**
   * Says that this record takes the place of an earlier one.
   *
   * @throws Refused without a reason
   */
  protected void supersede(UUID earlier, String reason) {
    Check.that()
        .holds(!reason.isBlank(), "supersedeReason", "Say why the earlier record is replaced.")
        .orRefuse();
    this.supersedesId = earlier;
    this.supersedeReason = reason.strip();
  }

  public @Nullable UUID supersedesId() {
    return supersedesId;
  }

  public @Nullable String supersedeReason() {
    return supersedeReason;
  }
}
