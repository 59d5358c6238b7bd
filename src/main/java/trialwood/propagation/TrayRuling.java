package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/**
 * Whether a tray counts. A void tray counts for nothing and stays visible; the latest word holds.
 */
@Entity
public class TrayRuling extends Fact {

  private UUID trayId;
  private LocalDate onDate;
  private boolean counts;
  private String reason;

  TrayRuling(UUID trayId, LocalDate onDate, boolean counts, String reason, Recorded recorded) {
    super(recorded);
    this.trayId = trayId;
    this.onDate = onDate;
    this.counts = counts;
    this.reason = reason.strip();
    Check.that()
        .holds(
            !this.reason.isEmpty() && this.reason.length() <= 300,
            "reason",
            "Say why, in up to 300 letters: a clogged nozzle, a dropped tray.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrayRuling() {}

  public UUID trayId() {
    return trayId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public boolean counts() {
    return counts;
  }

  public String reason() {
    return reason;
  }
}
