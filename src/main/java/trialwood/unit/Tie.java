package trialwood.unit;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/**
 * Somebody's word that a unit is a plant of an accession from one day until another. A tie is never
 * changed: the later word overrides the earlier for the days it covers, and taking it back is one
 * more tie.
 */
@Entity
public class Tie {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "saying_seq")
  @SequenceGenerator(name = "saying_seq", allocationSize = 1)
  private @Nullable Long id;

  private UUID unitId;
  private UUID accessionId;
  private LocalDate fromDate;
  private @Nullable LocalDate untilDate;
  private String reason;
  private @Nullable String evidence;
  private LocalDate saidOn;
  @Embedded private Recorded recorded;
  private @Nullable UUID correctionId;

  /**
   * @param untilDate the first day on which it no longer holds; open when absent
   * @param reason why this is said: stuck, potted, labels found exchanged
   * @param evidence what shows it: a photograph, the flower
   */
  public Tie(
      UUID unitId,
      UUID accessionId,
      LocalDate fromDate,
      @Nullable LocalDate untilDate,
      String reason,
      @Nullable String evidence,
      LocalDate saidOn,
      Recorded recorded) {
    this.unitId = unitId;
    this.accessionId = accessionId;
    this.fromDate = fromDate;
    this.untilDate = untilDate;
    this.reason = reason.strip();
    this.evidence = evidence;
    this.saidOn = saidOn;
    this.recorded = recorded;
    Check.that()
        .holds(
            untilDate == null || untilDate.isAfter(fromDate),
            "until",
            "The tie ends before it begins.")
        .holds(!this.reason.isEmpty(), "reason", "Say why the unit is tied to this accession.")
        .holds(this.reason.length() <= 300, "reason", "Keep the reason under 300 letters.")
        .holds(
            evidence == null || evidence.length() <= 300,
            "evidence",
            "Keep the evidence under 300 letters.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Tie() {}

  /** Says that it is one of the sayings of a correction. */
  public Tie within(@Nullable UUID correction) {
    this.correctionId = correction;
    return this;
  }

  /** The number of the saying: the higher one was said later. */
  public @Nullable Long id() {
    return id;
  }

  public UUID unitId() {
    return unitId;
  }

  public UUID accessionId() {
    return accessionId;
  }

  public LocalDate fromDate() {
    return fromDate;
  }

  public @Nullable LocalDate untilDate() {
    return untilDate;
  }

  public String reason() {
    return reason;
  }

  public @Nullable String evidence() {
    return evidence;
  }

  public LocalDate saidOn() {
    return saidOn;
  }

  public Recorded recorded() {
    return recorded;
  }

  /** The same on all sayings of one correction of labels. */
  public @Nullable UUID correctionId() {
    return correctionId;
  }

  boolean covers(LocalDate day) {
    return !day.isBefore(fromDate) && (untilDate == null || day.isBefore(untilDate));
  }
}
