package trialwood.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Collects what is unusual about one record. It may be true; whoever typed it is asked first, and
 * their reason is kept with the record. What is impossible is refused by {@link Check} before.
 */
public final class Questions {

  private final List<Problem> asked = new ArrayList<>();

  /** Asks about a field unless the number is a usual one. */
  public Questions unless(boolean usual, String field, String question) {
    if (!usual) {
      asked.add(new Problem(field, question));
    }
    return this;
  }

  /**
   * @param reason why it is so all the same, as said by somebody who was asked
   * @return the questions that this reason answers
   * @throws Asked when there is a question and no reason
   */
  public List<Problem> answeredBy(@Nullable String reason) {
    if (!asked.isEmpty() && (reason == null || reason.isBlank())) {
      throw new Asked(asked);
    }
    return List.copyOf(asked);
  }
}
