package trialwood.propagation.web;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trialwood.propagation.Treatment;
import trialwood.web.Entry;
import trialwood.web.Typed;

/** Reads the box for a strength in parts per million, into which percentages stray. */
final class Ppm {

  private static final BigDecimal PPM_IN_A_PERCENT = BigDecimal.valueOf(10_000);
  private static final BigDecimal STRONGEST_PERCENT =
      BigDecimal.valueOf(Treatment.STRONGEST_PPM, 4);

  private Ppm() {}

  static @Nullable Integer read(Entry entry, @Nullable String text) {
    if (text != null && Typed.count(text).isEmpty()) {
      Optional<BigDecimal> percent = Typed.decimal(text).filter(Ppm::isStrength);
      if (percent.isPresent()) {
        entry.wrong("ppm", asPercent(text.strip(), percent.get()));
        return null;
      }
    }
    return entry.countIfAny("ppm", text);
  }

  private static boolean isStrength(BigDecimal percent) {
    return percent.signum() > 0 && percent.compareTo(STRONGEST_PERCENT) <= 0;
  }

  private static String asPercent(String typed, BigDecimal percent) {
    return "Did you mean %,d ppm (%s %%)? “%s” is no whole number of ppm. Type whole ppm."
        .formatted(percent.multiply(PPM_IN_A_PERCENT).longValue(), percent, typed);
  }
}
