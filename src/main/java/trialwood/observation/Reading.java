package trialwood.observation;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What was read off a plant: exactly one of a number, a day, words, or why there is nothing. */
public record Reading(
    @Nullable BigDecimal number,
    @Nullable LocalDate day,
    @Nullable String text,
    @Nullable NoneBecause noneBecause) {

  public static Reading of(BigDecimal number) {
    return new Reading(number, null, null, null);
  }

  public static Reading of(LocalDate day) {
    return new Reading(null, day, null, null);
  }

  public static Reading of(String text) {
    return new Reading(null, null, text.strip(), null);
  }

  public static Reading none(NoneBecause because) {
    return new Reading(null, null, null, because);
  }
}
