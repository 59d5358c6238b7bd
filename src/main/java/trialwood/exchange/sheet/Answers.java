package trialwood.exchange.sheet;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.record.Checked;

/** What was asked about a record before it was stored, and the answer. */
final class Answers {

  private Answers() {}

  /**
   * @throws trialwood.record.Refused where one of the two is there without the other
   */
  static @Nullable Checked of(Row row, Column<String> asked, Column<String> checked) {
    String question = row.maybe(asked);
    String answer = row.maybe(checked);
    if (question == null && answer == null) {
      return null;
    }
    if (question == null) {
      throw row.refused(asked, "There is an answer here without its question.");
    }
    return new Checked(question, Objects.requireNonNullElse(answer, ""));
  }
}
