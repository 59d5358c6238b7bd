package trialwood.gate;

import jakarta.persistence.AttributeOverride;
import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.lineage.CheckRole;
import trialwood.record.Check;

/**
 * One line of a gate policy: what is asked, when it speaks for going on, and, apart from that, when
 * it speaks for a discard.
 */
@Entity
public class Criterion {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Enumerated(EnumType.STRING)
  private Stage gate;

  private int place;
  private String code;
  private String label;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  @Enumerated(EnumType.STRING)
  private Need need;

  private @Nullable String metric;
  private @Nullable UUID traitId;

  @Enumerated(EnumType.STRING)
  private @Nullable CheckRole checkRole;

  @Enumerated(EnumType.STRING)
  private @Nullable Direction direction;

  @Embedded
  @AttributeOverride(name = "line", column = @Column(name = "advance_line"))
  @AttributeOverride(name = "chance", column = @Column(name = "advance_chance"))
  private @Nullable Threshold advance;

  @Embedded
  @AttributeOverride(name = "line", column = @Column(name = "discard_line"))
  @AttributeOverride(name = "chance", column = @Column(name = "discard_chance"))
  private @Nullable Threshold discard;

  @Embedded private @Nullable LeastEvidence least;
  @Embedded private @Nullable DiscardOccasions occasions;
  private @Nullable BigDecimal allowedPercent;
  private String why;

  /**
   * @param code unique within the gate, with dashes
   * @param ask what the records are asked; none for what a person attests
   * @param discard {@link Threshold#NONE} for a criterion that never speaks for a discard
   * @param allowedPercent losses a lot may have in truth, for allowances
   * @param why one sentence, shown beside it
   */
  public Criterion(
      Stage gate,
      String code,
      String label,
      Kind kind,
      Need need,
      @Nullable Ask ask,
      @Nullable Direction direction,
      Threshold advance,
      Threshold discard,
      LeastEvidence least,
      DiscardOccasions occasions,
      @Nullable BigDecimal allowedPercent,
      String why) {
    this.gate = gate;
    this.code = code.strip();
    this.label = label.strip();
    this.kind = kind;
    this.need = need;
    this.metric = ask == null ? null : ask.metricKey();
    this.traitId = ask == null ? null : ask.traitId();
    this.checkRole = ask == null ? null : ask.check();
    this.direction = direction;
    this.advance = advance;
    this.discard = discard;
    this.least = least;
    this.occasions = occasions;
    this.allowedPercent = allowedPercent;
    this.why = why.strip();
    Check check =
        Check.that()
            .holds(
                this.code.matches("[a-z0-9-]{1,40}"),
                "criterion",
                "The code of a criterion is lower-case letters, figures and dashes.")
            .holds(gate != Stage.RELEASED, "gate", "There is no gate behind the release.")
            .holds(
                (kind == Kind.ATTESTED) == (ask == null),
                "metric",
                "Every criterion asks for a metric, except what a person attests.");
    lines(check);
    check.orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Criterion() {}

  private void lines(Check check) {
    boolean judgesValue = kind == Kind.FACT || kind == Kind.CHANCE;
    BigDecimal reach = advance().line();
    BigDecimal end = discard().line();
    check
        .holds(
            !judgesValue || (direction != null && reach != null),
            "advance_line",
            "Say which line is to be reached, and whether from below or from above.")
        .holds(
            kind != Kind.CHANCE || advance().chance() != null,
            "advance_chance",
            "Say with what chance the line is to be reached.")
        .holds(
            kind != Kind.CHANCE || (end == null) == (discard().chance() == null),
            "discard_chance",
            "A discard by chance needs both its line and its chance.")
        .holds(
            direction == null
                || reach == null
                || end == null
                || direction.reaches(reach.doubleValue(), end.doubleValue()),
            "discard_line",
            "The discard line lies on the good side of the line for advance.")
        .holds(
            kind != Kind.ALLOWANCE
                || (allowedPercent != null
                    && allowedPercent.signum() > 0
                    && allowedPercent.intValue() < 100),
            "allowed_percent",
            "Say what percentage may be lost, between 0 and 100.");
  }

  void standAt(int place) {
    this.place = place;
  }

  /** What the evidence says to this criterion. */
  public Finding judge(Evidence evidence, boolean markedOutstanding) {
    return new Judge(this, evidence, markedOutstanding).finding();
  }

  /** What the source is asked; none for what a person attests. */
  public @Nullable Ask ask() {
    return metric == null ? null : new Ask(metric, traitId, checkRole);
  }

  public @Nullable UUID id() {
    return id;
  }

  public Stage gate() {
    return gate;
  }

  public int place() {
    return place;
  }

  public String code() {
    return code;
  }

  public String label() {
    return label;
  }

  public Kind kind() {
    return kind;
  }

  public Need need() {
    return need;
  }

  public boolean isMust() {
    return need == Need.MUST;
  }

  public Direction direction() {
    return Objects.requireNonNullElse(direction, Direction.AT_LEAST);
  }

  public Threshold advance() {
    return Objects.requireNonNullElse(advance, Threshold.NONE);
  }

  public Threshold discard() {
    return Objects.requireNonNullElse(discard, Threshold.NONE);
  }

  public LeastEvidence least() {
    return Objects.requireNonNullElse(least, LeastEvidence.NONE);
  }

  public DiscardOccasions occasions() {
    return Objects.requireNonNullElse(occasions, DiscardOccasions.ONE);
  }

  public @Nullable BigDecimal allowedPercent() {
    return allowedPercent;
  }

  public String why() {
    return why;
  }
}
