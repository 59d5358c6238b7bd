package trialwood.record;

import java.util.ArrayList;
import java.util.List;

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

  /**
   * @throws Refused when any condition did not hold
   */
  public void orRefuse() {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }
}
