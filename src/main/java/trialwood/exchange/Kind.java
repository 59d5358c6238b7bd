package trialwood.exchange;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import trialwood.record.Refused;

/**
 * What a cell may hold and how it is read. Nothing is guessed: what cannot be read one way only is
 * refused with an example of what would be read.
 *
 * @param word what a person would call it
 * @param isChoice whether the record keeps it as a constant, SEED_PARENT for "seed parent"
 * @param reader from a cell that is not blank; throws {@link Refused} with the whole sentence
 */
public record Kind<T>(String word, boolean isChoice, Function<String, T> reader) {

  private static final Pattern DIGITS = Pattern.compile("\\d{1,9}");
  private static final Pattern DECIMAL = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  static final Kind<Integer> COUNT = new Kind<>("whole number", Kind::count);
  static final Kind<LocalDate> DAY = new Kind<>("day", Kind::day);

  /** A day that has come. */
  static final Kind<LocalDate> PAST = new Kind<>("day, not after today", Kind::day);

  /** A moment by the world's clock. */
  static final Kind<Instant> MOMENT = new Kind<>("moment, UTC", Kind::moment);

  static final Kind<MonthDay> DAY_OF_YEAR = new Kind<>("day of the year", Kind::dayOfYear);
  static final Kind<Boolean> YES_NO = new Kind<>("yes or no", Kind::yesNo);
  static final Kind<List<String>> LIST =
      new Kind<>("list, parted by blanks", cell -> Arrays.asList(BLANKS.split(cell)));

  Kind(String word, Function<String, T> reader) {
    this(word, false, reader);
  }

  static Kind<String> text(int letters) {
    return new Kind<>("text, up to %d letters".formatted(letters), cell -> text(cell, letters));
  }

  /** A number of at most so many digits, of which so many may follow the point. */
  static Kind<BigDecimal> decimal(int digits, int places) {
    return new Kind<>("number", cell -> decimal(cell, digits, places));
  }

  /** One of the words of an enumeration. */
  static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
    List<E> all = List.of(type.getEnumConstants());
    String words = all.stream().map(Enum::name).map(Kind::word).collect(Collectors.joining(", "));
    return new Kind<>("one of: " + words, true, cell -> choice(cell, all, words));
  }

  /** As a word in a file: SEED_PARENT is "seed parent". */
  static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <E extends Enum<E>> E choice(String cell, List<E> all, String words) {
    String typed = cell.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    return all.stream()
        .filter(constant -> word(constant.name()).equals(typed))
        .findFirst()
        .orElseThrow(() -> refused("Write one of: %s.".formatted(words)));
  }

  private static String text(String cell, int letters) {
    if (cell.length() > letters) {
      throw refused("At most %d letters; this has %,d.".formatted(letters, cell.length()));
    }
    return cell;
  }

  private static Integer count(String cell) {
    if (!DIGITS.matcher(cell).matches()) {
      throw refused("Write a whole number in digits only, for example 24; leave unknown empty.");
    }
    return Integer.valueOf(cell);
  }

  private static BigDecimal decimal(String cell, int digits, int places) {
    if (!DECIMAL.matcher(cell).matches()) {
      throw refused("Write a number with a decimal point, for example 1.5; leave unknown empty.");
    }
    BigDecimal number = new BigDecimal(cell);
    if (number.scale() > places || number.precision() - number.scale() > digits - places) {
      throw refused(
          "At most %d digits before the point and %d after it.".formatted(digits - places, places));
    }
    return number;
  }

  private static LocalDate day(String cell) {
    try {
      return LocalDate.parse(cell);
    } catch (DateTimeException unread) {
      throw refused("Write a day as year-month-day, for example 2025-04-03 for 3 April 2025.");
    }
  }

  private static Instant moment(String cell) {
    try {
      return Instant.parse(cell);
    } catch (DateTimeException unread) {
      throw refused("Write a moment as 2025-04-03T09:30:00Z, by the world's clock (UTC).");
    }
  }

  private static MonthDay dayOfYear(String cell) {
    try {
      return MonthDay.parse("--" + cell);
    } catch (DateTimeException unread) {
      throw refused("Write a day of the year as month-day, for example 04-15 for 15 April.");
    }
  }

  private static Boolean yesNo(String cell) {
    return switch (cell.toLowerCase(Locale.ROOT)) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw refused("Write yes or no.");
    };
  }

  private static Refused refused(String sentence) {
    return new Refused("", sentence);
  }
}
