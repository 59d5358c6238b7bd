package trialwood.exchange;

import java.math.BigDecimal;
import java.sql.Date;
import java.sql.Timestamp;
import java.time.OffsetDateTime;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A cell as it stands in a file. A spreadsheet takes a text that begins with = + - @, a tab or a
 * carriage return for a formula and runs it; such texts go out behind an apostrophe, which is taken
 * off again when they come back. Real numbers are left alone.
 */
final class Cell {

  private static final Pattern FORMULA = Pattern.compile("'*[=+\\-@\t\r].*", Pattern.DOTALL);
  private static final Pattern GUARDED = Pattern.compile("'+[=+\\-@\t\r].*", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private Cell() {}

  /** What was meant by a cell: blanks around it and a guarding apostrophe are not part of it. */
  static String bare(String cell) {
    String stripped = cell.strip();
    return GUARDED.matcher(stripped).matches() ? stripped.substring(1) : stripped;
  }

  /** A value from the record as a cell of a file. */
  static String of(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Date day) {
      return day.toLocalDate().toString();
    }
    if (value instanceof Timestamp moment) {
      return moment.toInstant().toString();
    }
    if (value instanceof OffsetDateTime moment) {
      return moment.toInstant().toString();
    }
    if (value instanceof BigDecimal number) {
      return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
    String text = value.toString();
    boolean formula = FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
    return formula ? "'" + text : text;
  }
}
