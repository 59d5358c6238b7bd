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
  private LocalDate onDate;
  private String question;
  private String account;
  private Instant recordedAt;
  private @Nullable String answer;
  private @Nullable String answeredBy;
  private @Nullable Instant answeredAt;

  public Doubt(UUID unitId, LocalDate onDate, String question, Recorded raised) {
    this.unitId = unitId;
    this.onDate = onDate;
    this.question = question;
    this.account = raised.account();
    this.recordedAt = raised.recordedAt();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Doubt() {}

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

  public @Nullable UUID id() {
    return id;
  }

  public UUID unitId() {
    return unitId;
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
}
