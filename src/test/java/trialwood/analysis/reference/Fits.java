package trialwood.analysis.reference;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import trialwood.analysis.Answer;

/** What was fitted for one line of inputs, made once, and the parts of it that rows ask for. */
final class Fits {

  /** One number of an answer. */
  interface Quantity<T> {
    Object of(Row row, T answer);
  }

  private final Map<String, Object> known = new HashMap<>();

  @SuppressWarnings("unchecked")
  <T> T once(String key, Supplier<T> fit) {
    if (!known.containsKey(key)) {
      known.put(key, fit.get());
    }
    return (T) known.get(key);
  }

  static Object number(Answer<Double> answer) {
    return answer.value().orElse(Double.NaN);
  }

  /** A part of an answer, NaN where it is lacking. */
  static <T> Object part(Row row, Answer<T> answer, Quantity<T> quantity) {
    return answer instanceof Answer.Known<T> known ? quantity.of(row, known.answer()) : Double.NaN;
  }
}
