package trialwood.propagation;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/** Which prior of ρ stands from a day on, and why; the latest choice holds. */
@Entity
public class TrayLikenessChoice extends Fact {

  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private LikenessPrior prior;

  private String reason;

  TrayLikenessChoice(LocalDate onDate, LikenessPrior prior, String reason, Recorded recorded) {
    super(recorded);
    this.onDate = onDate;
    this.prior = prior;
    this.reason = reason.strip();
    Check.that()
        .holds(!this.reason.isEmpty(), "reason", "Say why.")
        .fits(this.reason, 300, "reason")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrayLikenessChoice() {}

  public LocalDate onDate() {
    return onDate;
  }

  public LikenessPrior prior() {
    return prior;
  }

  public String reason() {
    return reason;
  }
}
