package trialwood.gate;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/**
 * What a person decided at a gate, beside what the records spoke for, with the evidence as it then
 * stood. It is never overwritten; a later decision stands after it.
 */
@Entity
public class Decision extends Fact {

  private UUID accessionId;

  @Enumerated(EnumType.STRING)
  private Stage gate;

  private UUID policyId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private Choice choice;

  @Enumerated(EnumType.STRING)
  private Choice line;

  private @Nullable String reason;
  private @Nullable LocalDate holdUntil;

  @JdbcTypeCode(SqlTypes.JSON)
  private StoredEvidence evidence;

  private int evidenceSchema = StoredEvidence.SCHEMA;

  @ElementCollection
  @CollectionTable(name = "decision_line", joinColumns = @JoinColumn(name = "decision_id"))
  @OrderColumn(name = "place")
  private List<DecisionLine> lines = new ArrayList<>();

  /**
   * @param review what the records said on the day of the ruling
   * @throws trialwood.record.Refused without a reason for going against the line, or a hold without
   *     a later day
   */
  public Decision(Ruling ruling, Review review, Recorded recorded) {
    super(recorded);
    if (!review.isOf(ruling)) {
      throw new IllegalArgumentException("The review is of another candidate, gate or day.");
    }
    this.accessionId = ruling.accessionId();
    this.gate = ruling.gate();
    this.policyId = Objects.requireNonNull(review.policy().id());
    this.onDate = ruling.on();
    this.choice = ruling.choice();
    this.line = review.line();
    this.reason =
        ruling.reason() == null || ruling.reason().isBlank() ? null : ruling.reason().strip();
    this.holdUntil = choice == Choice.HOLD ? ruling.holdUntil() : null;
    this.evidence = StoredEvidence.of(review);
    this.lines = new ArrayList<>(review.findings().stream().map(DecisionLine::of).toList());
    Check.that()
        .holds(
            choice == line || reason != null,
            "reason",
            "The records speak for %s. Say why you decide otherwise.".formatted(line.word()))
        .holds(
            reason == null || reason.length() <= 1000,
            "reason",
            "Keep the reason under 1 000 letters.")
        .holds(
            choice != Choice.HOLD || holdUntil != null,
            "holdUntil",
            "Say until when it is held: the day on which it is looked at again.")
        .holds(
            holdUntil == null || holdUntil.isAfter(onDate),
            "holdUntil",
            "A hold ends after the day of the decision.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Decision() {}

  public UUID accessionId() {
    return accessionId;
  }

  public Stage gate() {
    return gate;
  }

  public UUID policyId() {
    return policyId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Choice choice() {
    return choice;
  }

  /** What the records spoke for. */
  public Choice line() {
    return line;
  }

  public @Nullable String reason() {
    return reason;
  }

  public @Nullable LocalDate holdUntil() {
    return holdUntil;
  }

  public StoredEvidence evidence() {
    return evidence;
  }

  public int evidenceSchema() {
    return evidenceSchema;
  }

  public List<DecisionLine> lines() {
    return List.copyOf(lines);
  }
}
