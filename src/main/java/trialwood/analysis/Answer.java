package trialwood.analysis;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a method answers where the records may be too few: the value, or the reason why there is
 * none.
 *
 * @param <T> what is asked for
 */
public sealed interface Answer<T> {

  /** The records suffice. */
  record Known<T>(T answer) implements Answer<T> {}

  /** They do not; {@code reason} is a sentence to show in place of the value. */
  record Lacking<T>(String reason) implements Answer<T> {}

  static <T> Answer<T> known(T answer) {
    return new Known<>(answer);
  }

  static <T> Answer<T> lacking(String reason) {
    return new Lacking<>(reason);
  }

  /** The value, or empty where the records are too few. */
  default Optional<T> value() {
    return this instanceof Known<T> known ? Optional.of(known.answer()) : Optional.empty();
  }

  /** The reason why there is no value, or empty where there is one. */
  default Optional<String> lack() {
    return this instanceof Lacking<T> lacking ? Optional.of(lacking.reason()) : Optional.empty();
  }

  /** The same answer, its value turned into another; the reason stays. */
  default <R> Answer<R> map(Function<? super T, ? extends R> turn) {
    return this instanceof Known<T> known
        ? known(turn.apply(known.answer()))
        : lacking(lack().orElseThrow());
  }
}
