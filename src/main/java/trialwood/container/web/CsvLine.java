package trialwood.container.web;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One line of a CSV file (RFC 4180). A cell that a spreadsheet would take for a formula is preceded
 * by an apostrophe.
 */
final class CsvLine {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private CsvLine() {}

  static String of(List<@Nullable Object> cells) {
    return cells.stream().map(CsvLine::cell).collect(Collectors.joining(","));
  }

  private static String cell(@Nullable Object value) {
    String text = Objects.toString(value, "");
    boolean formula =
        !text.isEmpty()
            && "=+-@\t\r".indexOf(text.charAt(0)) >= 0
            && !NUMBER.matcher(text).matches();
    String plain = formula ? "'" + text : text;
    boolean quoted = plain.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return quoted ? '"' + plain.replace("\"", "\"\"") + '"' : plain;
  }
}
