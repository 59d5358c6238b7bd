package trialwood.label.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import trialwood.web.Entry;

/** Lengths in the boxes of a form, in hundredths of a millimetre. */
final class Boxes {

  private Boxes() {}

  /** Without zeros that say nothing. */
  static String number(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** A number that must be there. */
  static BigDecimal decimal(Entry entry, String field, @Nullable String text) {
    if (text == null || text.isBlank()) {
      entry.wrong(field, "Type a number; 0 is one.");
      return BigDecimal.ZERO;
    }
    BigDecimal read = entry.decimalIfAny(field, text);
    return read == null ? BigDecimal.ZERO : read.setScale(2, RoundingMode.HALF_UP);
  }

  static String text(@Nullable String text) {
    return text == null ? "" : text.strip();
  }
}
