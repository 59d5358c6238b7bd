package trialwood.candidate;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/**
 * Something that happened to the ortet, to the certainty of its identity, or to the breeder's eye.
 */
@Entity
public class CandidateEvent extends Fact {

  /** What happened. */
  public enum Kind {
    ORTET_STANDING,
    ORTET_MOVED,
    ORTET_LOST,
    IDENTITY_PROVISIONAL,
    IDENTITY_CONFIRMED,
    MARKED_OUTSTANDING,
    NO_LONGER_OUTSTANDING,
    REOPENED;

    /** Whether it says where the ortet is, or that it is gone. */
    boolean isOfOrtet() {
      return this == ORTET_STANDING || this == ORTET_MOVED || this == ORTET_LOST;
    }

    /** As words on a page. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private UUID accessionId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  private String note;

  public CandidateEvent(
      UUID accessionId, LocalDate onDate, Kind kind, String note, Recorded recorded) {
    super(recorded);
    this.accessionId = accessionId;
    this.onDate = onDate;
    this.kind = kind;
    this.note = note.strip();
    Check.that()
        .holds(!this.note.isEmpty(), "note", "Say what happened, in a few words.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected CandidateEvent() {}

  public UUID accessionId() {
    return accessionId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Kind kind() {
    return kind;
  }

  public String note() {
    return note;
  }
}
