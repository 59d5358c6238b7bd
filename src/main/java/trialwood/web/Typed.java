package trialwood.web;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what people type. Empty where it cannot be read: the caller says so beside the field and
 * keeps the text. Whether there is any text at all is the caller's question; blank is not zero.
 */
public final class Typed {

  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(\\d{1,9}([.,]\\d{0,6})?|[.,]\\d{1,6})");
  private static final Pattern COUNT = Pattern.compile("\\d{1,9}");

  private static final Pattern TIME = Pattern.compile("([01]?\\d|2[0-3])[:.h]?([0-5]\\d)");

  private Typed() {}

  /** A decimal with point or comma ("3,5" is 3.5), spaces and a true minus sign forgiven. */
  public static Optional<BigDecimal> decimal(String text) {
    String bare = bare(text).replace('\u2212', '-');
    return DECIMAL.matcher(bare).matches()
        ? Optional.of(new BigDecimal(bare.replace(',', '.')))
        : Optional.empty();
  }

  /** A whole number from zero up; "24.0" and "-1" are not counts. */
  public static OptionalInt count(String text) {
    String bare = bare(text);
    return COUNT.matcher(bare).matches()
        ? OptionalInt.of(Integer.parseInt(bare))
        : OptionalInt.empty();
  }

  /**
   * A date as 2026-05-14, 14 May 2026, 14 May (of this year), today or yesterday, month names in
   * English, short or whole. 5/6/2026 is refused: nobody can tell which of the two is the month.
   */
  public static Optional<LocalDate> date(String text, LocalDate today) {
    String words = text.strip().replaceAll("[\\s\u00a0]+", " ");
    if (words.equalsIgnoreCase("today")) {
      return Optional.of(today);
    }
    if (words.equalsIgnoreCase("yesterday")) {
      return Optional.of(today.minusDays(1));
    }
    for (DateTimeFormatter form : forms(today)) {
      try {
        return Optional.of(LocalDate.parse(words, form));
      } catch (DateTimeException unread) {
        // the next form may read it
      }
    }
    return Optional.empty();
  }

  /** A time of day by the twenty-four hours of the clock: 9:30, 09.30, 0930, 14h05. */
  public static Optional<LocalTime> time(String text) {
    Matcher time = TIME.matcher(bare(text));
    return time.matches()
        ? Optional.of(
            LocalTime.of(Integer.parseInt(time.group(1)), Integer.parseInt(time.group(2))))
        : Optional.empty();
  }

  private static DateTimeFormatter[] forms(LocalDate today) {
    return new DateTimeFormatter[] {
      DateTimeFormatter.ISO_LOCAL_DATE, words("d MMM[ uuuu]", today), words("d MMMM[ uuuu]", today)
    };
  }

  private static DateTimeFormatter words(String pattern, LocalDate today) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .parseDefaulting(ChronoField.YEAR, today.getYear())
        .toFormatter(Locale.ENGLISH)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]", "");
  }
}
