package trialwood.propagation;

import java.util.ArrayList;
import java.util.List;
import trialwood.record.Problem;

/** Collects what is possible but unusual in one record: a person is asked before it is stored. */
final class Unusual {

  private final List<Problem> questions = new ArrayList<>();

  /** Asks when something is so. */
  Unusual ask(boolean isSo, String field, String sentence) {
    if (isSo) {
      questions.add(new Problem(field, sentence));
    }
    return this;
  }

  Unusual ask(List<Problem> more) {
    questions.addAll(more);
    return this;
  }

  List<Problem> list() {
    return List.copyOf(questions);
  }
}
