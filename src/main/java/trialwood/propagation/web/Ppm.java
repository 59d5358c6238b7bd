package trialwood.propagation.web;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trialwood.web.Entry;
import trialwood.web.Typed;

/** Reads the box for a strength in parts per million, into which percentages stray. */
final class Ppm {

  private static final BigDecimal PPM_IN_A_PERCENT = BigDecimal.valueOf(10_000);

  private Ppm() {}

  static @Nullable Integer read(Entry entry, @Nullable String text) {
    if (text != null && Typed.count(text).isEmpty()) {
      Optional<BigDecimal> percent = Typed.decimal(text);
      if (percent.isPresent() && percent.get().signum() > 0) {
        entry.wrong("ppm", asPercent(text.strip(), percent.get()));
        return null;
      }
    }
    return entry.countIfAny("ppm", text);
  }

  private static String asPercent(String typed, BigDecimal percent) {
    return "Did you mean %,d ppm (%s %%)? “%s” is no whole number of ppm. Type whole ppm."
        .formatted(percent.multiply(PPM_IN_A_PERCENT).longValue(), percent, typed);
  }
}
