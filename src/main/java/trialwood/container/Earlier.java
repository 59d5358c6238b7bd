package trialwood.container;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.observation.Reading;
import trialwood.web.Measures;

/**
 * The value before this one, on the same plant. Asks about a length that can hardly follow it: one
 * that looks like inches in a box for centimetres, or a plant that shrank within a season. Common
 * practice, no source.
 */
record Earlier(LocalDate on, @Nullable BigDecimal value) {

  private static final BigDecimal INCH = new BigDecimal("2.54");

  /** How near to a ratio of 2.54 is near: 8 %. */
  private static final double NEAR = 0.08;

  private static final double SHRUNK = 0.9;

  /** Whether the reading is this very value, taken down before. */
  boolean says(Reading reading, LocalDate day) {
    return on.equals(day)
        && (value == null ? reading.number() == null : isSame(value, reading.number()));
  }

  private static boolean isSame(BigDecimal value, @Nullable BigDecimal number) {
    return number != null && value.compareTo(number) == 0;
  }

  /** The question, or empty where nothing is odd. */
  Optional<String> question(Trait trait, BigDecimal now, LocalDate day) {
    if (value == null || !"cm".equals(trait.unit()) || value.signum() <= 0 || now.signum() <= 0) {
      return Optional.empty();
    }
    double ratio = now.doubleValue() / value.doubleValue();
    if (isNearInches(1 / ratio)) {
      return Optional.of(
          "%s in = %s cm? The last was %s cm, on %s."
              .formatted(plain(now), rounded(now.multiply(INCH)), plain(value), Measures.day(on)));
    }
    if (isNearInches(ratio)) {
      return Optional.of(
          "%s in = %s cm? The last, %s on %s, may have been in inches."
              .formatted(
                  plain(value), rounded(value.multiply(INCH)), plain(value), Measures.day(on)));
    }
    if (ratio < SHRUNK && on.getYear() == day.getYear()) {
      return Optional.of(
          "%s cm, and %s cm on %s: did it shrink?"
              .formatted(plain(now), plain(value), Measures.day(on)));
    }
    return Optional.empty();
  }

  private static boolean isNearInches(double ratio) {
    return Math.abs(ratio / INCH.doubleValue() - 1) <= NEAR;
  }

  private static String rounded(BigDecimal number) {
    return number.setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
