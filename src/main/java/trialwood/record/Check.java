package trialwood.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Collects every problem of one record before refusing it, so that a person hears them all at once.
 */
public final class Check {

  private final List<Problem> problems = new ArrayList<>();

  private Check() {}

  public static Check that() {
    return new Check();
  }

  /** Notes a problem with the field unless the condition holds. */
  public Check holds(boolean condition, String field, String sentence) {
    if (!condition) {
      problems.add(new Problem(field, sentence));
    }
    return this;
  }

  /** Notes a text that is longer than its field; one that is not there fits. */
  public Check fits(@Nullable String text, int letters, String field) {
    return holds(
        text == null || text.length() <= letters, field, "At most %d letters.".formatted(letters));
  }

  /** Notes a code that cannot stand in the address of a page. */
  public Check isPlain(String code, String field) {
    return holds(code.isEmpty() || CodeKey.isPlain(code), field, CodeKey.PLAIN_RULE);
  }

  /**
   * @throws Refused when any condition did not hold
   */
  public void orRefuse() {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }
}
