package trialwood.gate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import trialwood.evidence.Metric;
import trialwood.web.Measures;

/** How findings write values, lines and chances. */
final class Words {

  private static final Measures MEASURES = new Measures(ZoneOffset.UTC);

  private Words() {}

  /**
   * Percentages with one decimal; others from 10 up with one, below with two, none padded. What
   * holds or does not is a yes or a no.
   */
  static String value(double value, String unit) {
    if (unit.equals(Metric.YES_OR_NO)) {
      return value >= 1 ? "yes" : "no";
    }
    if (unit.startsWith("%")) {
      return MEASURES.quantity(value, 1, unit);
    }
    int decimals = Math.abs(value) >= 10 ? 1 : 2;
    return line(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP), unit);
  }

  /** With the decimals a person gave it. */
  static String line(@Nullable BigDecimal line, String unit) {
    BigDecimal bare = line == null ? BigDecimal.ZERO : line.stripTrailingZeros();
    return MEASURES.quantity(bare, Math.max(0, bare.scale()), unit);
  }

  static String chance(double probability) {
    return MEASURES.chance(probability);
  }

  /** A chance that a policy asks for, as exact as it is: 0.90. */
  static String asked(@Nullable BigDecimal chance) {
    return MEASURES.number(
        chance, chance == null ? 2 : Math.max(2, chance.stripTrailingZeros().scale()));
  }

  static String date(@Nullable LocalDate date) {
    return MEASURES.date(date);
  }
}
