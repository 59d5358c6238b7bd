package trialwood.exchange;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.record.Refused;

/**
 * One column of a sheet.
 *
 * @param known what its codes name; absent where a cell is no code of something on record
 * @param meaning what stands in it, in one line
 */
public record Column<T>(
    String name, Kind<T> kind, @Nullable Known known, Need need, String meaning) {

  /** Whether a cell may be empty. */
  enum Need {
    MAY,
    MUST,
    /** May be empty, and is part of the key: an empty cell tells a row from a filled one. */
    TELLS,
    /** May be empty, and a file written before the sheet had the column may be without it. */
    LATER,
    /** Must be filled, and the key columns of a row together occur once. */
    KEY
  }

  public static Column<String> text(String name, int letters, String meaning) {
    return of(name, Kind.text(letters), meaning);
  }

  /** The code of something on record. */
  public static Column<String> code(String name, Known known, String meaning) {
    Kind<String> kind = new Kind<>("code of a " + known.word(), cell -> cell);
    return new Column<>(name, kind, known, Need.MAY, meaning);
  }

  public static Column<Integer> count(String name, String meaning) {
    return of(name, Kind.COUNT, meaning);
  }

  /** A number of at most so many digits, of which so many may follow the point. */
  public static Column<BigDecimal> decimal(String name, int digits, int places, String meaning) {
    return of(name, Kind.decimal(digits, places), meaning);
  }

  /** Any day. */
  public static Column<LocalDate> day(String name, String meaning) {
    return of(name, Kind.DAY, meaning);
  }

  /** A day that has come. */
  public static Column<LocalDate> past(String name, String meaning) {
    return of(name, Kind.PAST, meaning);
  }

  /** A moment, as the world's clock has it. */
  public static Column<Instant> moment(String name, String meaning) {
    return of(name, Kind.MOMENT, meaning);
  }

  public static Column<MonthDay> dayOfYear(String name, String meaning) {
    return of(name, Kind.DAY_OF_YEAR, meaning);
  }

  public static Column<Boolean> yesNo(String name, String meaning) {
    return of(name, Kind.YES_NO, meaning);
  }

  public static Column<List<String>> list(String name, String meaning) {
    return of(name, Kind.LIST, meaning);
  }

  /** Codes of things on record. */
  public static Column<List<String>> codes(String name, Known known, String meaning) {
    return new Column<>(name, Kind.LIST, known, Need.MAY, meaning);
  }

  public static <E extends Enum<E>> Column<E> choice(String name, Class<E> type, String meaning) {
    return of(name, Kind.choice(type), meaning);
  }

  /** The initials of who did it. */
  public static Column<String> by() {
    return code("by", Known.PERSON, "initials of who did it").required();
  }

  public static Column<String> note() {
    return text("note", 300, "anything worth knowing");
  }

  private static <T> Column<T> of(String name, Kind<T> kind, String meaning) {
    return new Column<>(name, kind, null, Need.MAY, meaning);
  }

  /** The same, and every row must fill it. */
  public Column<T> required() {
    return new Column<>(name, kind, known, Need.MUST, meaning);
  }

  /** The same, and a file may be without it: files written earlier can still be taken in. */
  public Column<T> later() {
    return new Column<>(name, kind, known, Need.LATER, meaning);
  }

  /** The same, required, and part of what tells one row from another. */
  public Column<T> key() {
    return new Column<>(name, kind, known, Need.KEY, meaning);
  }

  /** The same, part of what tells one row from another though it may be empty. */
  public Column<T> telling() {
    return new Column<>(name, kind, known, Need.TELLS, meaning);
  }

  public boolean isRequired() {
    return need == Need.MUST || need == Need.KEY;
  }

  boolean isKey() {
    return need == Need.KEY || need == Need.TELLS;
  }

  /**
   * Reads one cell; nothing for a blank one.
   *
   * @throws Refused when it is blank but required, or is no such thing
   */
  @Nullable T read(String cell, LocalDate today) {
    String bare = Cell.bare(cell);
    if (bare.isEmpty()) {
      if (isRequired()) {
        throw new Refused(name, "This cell must be filled: %s.".formatted(meaning));
      }
      return null;
    }
    T value = kind.reader().apply(bare);
    if (kind.equals(Kind.PAST) && ((LocalDate) value).isAfter(today)) {
      throw new Refused(name, "This day has not come yet; today is %s.".formatted(today));
    }
    return value;
  }

  /** A value from the record as a cell of this column. */
  String write(@Nullable Object value) {
    return kind.isChoice() && value != null ? Kind.word(value.toString()) : Cell.of(value);
  }
}
