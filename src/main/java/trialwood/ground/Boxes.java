package trialwood.ground;

import java.math.BigDecimal;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What stands in the boxes of a form: plain text, empty where there is nothing. */
final class Boxes {

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private Boxes() {}

  static String text(@Nullable String text) {
    return text == null ? "" : text.strip();
  }

  /** Without zeros that say nothing. */
  static String number(@Nullable BigDecimal number) {
    if (number == null) {
      return "";
    }
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** 15 Apr. */
  static String day(@Nullable MonthDay day) {
    return day == null ? "" : DAY.format(day);
  }

  static String yesNo(@Nullable Boolean ticked) {
    return Boolean.TRUE.equals(ticked) ? "yes" : "no";
  }

  /** A constant as a word in a sentence. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
