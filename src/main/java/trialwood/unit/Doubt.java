package trialwood.unit;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/**
 * Two records that contradict each other. Both are kept and a person is asked: it may be the one
 * sign that labels were exchanged.
 */
@Entity
public class Doubt {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID unitId;
  private @Nullable UUID otherUnitId;
  private LocalDate onDate;
  private String question;
  private @Nullable UUID personId;
  private String account;
  private Instant recordedAt;
  private @Nullable String answer;
  private @Nullable String answeredBy;
  private @Nullable Instant answeredAt;
  private @Nullable UUID correctionId;

  public Doubt(UUID unitId, LocalDate onDate, String question, Recorded raised) {
    this(unitId, null, onDate, question, null, raised);
  }

  private Doubt(
      UUID unitId,
      @Nullable UUID otherUnitId,
      LocalDate onDate,
      String question,
      @Nullable UUID personId,
      Recorded raised) {
    this.unitId = unitId;
    this.otherUnitId = otherUnitId;
    this.onDate = onDate;
    this.question = question;
    this.personId = personId;
    this.account = raised.account();
    this.recordedAt = raised.recordedAt();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Doubt() {}

  /** A question between two units that should be of one accession on that day. */
  public static Doubt between(
      UUID unitId, UUID otherUnitId, LocalDate onDate, String question, Recorded raised) {
    return new Doubt(unitId, otherUnitId, onDate, question, null, raised);
  }

  /** What a person saw that does not agree with the label. */
  public static Doubt noticed(UUID unitId, LocalDate onDate, String question, Recorded by) {
    return new Doubt(unitId, null, onDate, question, by.personId(), by);
  }

  /**
   * Takes a person's answer; the question stays beside it.
   *
   * @throws trialwood.record.Refused when the answer is empty or one was given before
   */
  public void answer(String words, Recorded by) {
    Check.that()
        .holds(answer == null, "answer", "This question has been answered.")
        .holds(!words.isBlank(), "answer", "Write what you found out.")
        .orRefuse();
    this.answer = words.strip();
    this.answeredBy = by.account();
    this.answeredAt = by.recordedAt();
  }

  /** Takes a correction of labels for its answer; see {@link #answer}. */
  public void settledBy(@Nullable UUID correction, String words, Recorded by) {
    answer(words, by);
    this.correctionId = correction;
  }

  /** The same question once more, because its answer was taken back. */
  Doubt again(Recorded by) {
    return new Doubt(unitId, otherUnitId, onDate, question, personId, by);
  }

  public @Nullable UUID id() {
    return id;
  }

  public UUID unitId() {
    return unitId;
  }

  /** The unit that this one contradicts, where the question lies between two. */
  public @Nullable UUID otherUnitId() {
    return otherUnitId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public String question() {
    return question;
  }

  public @Nullable String answer() {
    return answer;
  }

  public @Nullable String answeredBy() {
    return answeredBy;
  }

  /** The correction of labels that answered it, if one did. */
  public @Nullable UUID correctionId() {
    return correctionId;
  }
}
