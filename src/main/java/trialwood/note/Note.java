package trialwood.note;

import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** What somebody saw, in words, on a day, about one thing. */
@Entity
public class Note extends CorrectableFact {

  private @Nullable UUID unitId;
  private @Nullable UUID accessionId;
  private @Nullable UUID runId;
  private @Nullable UUID siteId;
  private @Nullable UUID houseId;
  private LocalDate onDate;
  private String words;

  /**
   * @param pictured whether photographs come with it: then words are not needed
   */
  Note(
      Subject about,
      LocalDate onDate,
      String words,
      boolean pictured,
      LocalDate today,
      Recorded recorded) {
    super(recorded);
    Check.that()
        .holds(!onDate.isAfter(today), "on", "This day is still to come.")
        .holds(pictured || !words.isBlank(), "words", "Write something, or take a photograph.")
        .fits(words, 1000, "words")
        .orRefuse();
    switch (about.kind()) {
      case UNIT -> unitId = about.id();
      case ACCESSION -> accessionId = about.id();
      case RUN -> runId = about.id();
      case SITE -> siteId = about.id();
      case HOUSE -> houseId = about.id();
    }
    this.onDate = onDate;
    this.words = words.strip();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Note() {}

  Note insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  /** Whether it is about this. */
  boolean isAbout(Subject subject) {
    UUID id =
        switch (subject.kind()) {
          case UNIT -> unitId;
          case ACCESSION -> accessionId;
          case RUN -> runId;
          case SITE -> siteId;
          case HOUSE -> houseId;
        };
    return subject.id().equals(id);
  }

  public LocalDate onDate() {
    return onDate;
  }

  public String words() {
    return words;
  }
}
