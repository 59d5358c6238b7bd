package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/** Where a tray stands from a day on, until its next place; before, it stood where it was stuck. */
@Entity
public class TrayPlace extends Fact {

  private UUID trayId;
  private UUID benchId;
  private int place;
  private LocalDate fromDate;
  private String reason;

  public TrayPlace(
      UUID trayId, UUID benchId, int place, LocalDate fromDate, String reason, Recorded recorded) {
    super(recorded);
    this.trayId = trayId;
    this.benchId = benchId;
    this.place = place;
    this.fromDate = fromDate;
    this.reason = reason.strip();
    Check.that()
        .holds(place >= 1, "place", "Places are numbered from 1.")
        .holds(!this.reason.isEmpty(), "reason", "Say why it stands there now.")
        .fits(this.reason, 300, "reason")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected TrayPlace() {}

  public UUID trayId() {
    return trayId;
  }

  public UUID benchId() {
    return benchId;
  }

  public int place() {
    return place;
  }

  public LocalDate fromDate() {
    return fromDate;
  }

  public String reason() {
    return reason;
  }
}
