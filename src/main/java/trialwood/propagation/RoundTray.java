package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tray as the round meets it.
 *
 * @param due the day the task came due; null while none has
 * @param day after sticking, or for a weaning after the last mist, that the task belongs to
 * @param unseen days since anybody looked, or since sticking
 * @param blockedBy why nothing can be done before a person has decided
 * @param doubtId the open question that blocks it, where it is one
 */
public record RoundTray(
    String tray,
    String run,
    @Nullable String bench,
    @Nullable String block,
    @Nullable String place,
    String accession,
    BenchTask task,
    State state,
    @Nullable LocalDate due,
    int day,
    int unseen,
    @Nullable String blockedBy,
    @Nullable UUID doubtId) {

  /** How far the work at a tray is; half-done has names. */
  public enum State {
    /** A whole week went by and nobody looked, while the cuttings are young. */
    MISSED("missed"),
    OVERDUE("overdue"),
    DUE("due"),
    DONE("done today"),
    /** Void, or a question is open. */
    BLOCKED("blocked"),
    /** Nothing to do today. */
    RESTING("resting");

    private final String word;

    State(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Whether somebody should go to it now. */
  public boolean isWaiting() {
    return state == State.DUE || state == State.OVERDUE || state == State.MISSED;
  }

  /** Where on the bench it stands, in words. */
  public String stand() {
    return (block == null ? "" : "block " + block)
        + (block == null || place == null ? "" : ", ")
        + (place == null ? "" : "place " + place);
  }

  /** What is to be done, of which day. */
  public String work() {
    return switch (task) {
      case LOOK -> "Look, day " + day;
      case FINAL_COUNT -> "Final count, day " + day;
      case WEANING -> "Weaning, %d days off the mist".formatted(day);
    };
  }
}
