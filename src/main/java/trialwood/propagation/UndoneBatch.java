package trialwood.propagation;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/** A batch that was taken back before anything was recorded on it: what it said, in one line. */
@Entity
public class UndoneBatch extends Fact {

  private UUID runId;
  private UUID accessionId;
  private String code;
  private int trays;
  private int stuck;
  private LocalDate stuckOn;

  UndoneBatch(Batch batch, SessionBatch line, Recorded recorded) {
    super(recorded);
    this.runId = batch.runId();
    this.accessionId = line.accessionId();
    this.code = batch.code();
    this.trays = line.trays();
    this.stuck = line.stuck();
    this.stuckOn = line.stuckOn();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected UndoneBatch() {}

  public String code() {
    return code;
  }

  public int trays() {
    return trays;
  }

  public int stuck() {
    return stuck;
  }

  public LocalDate stuckOn() {
    return stuckOn;
  }
}
