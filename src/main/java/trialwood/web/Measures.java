package trialwood.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The one place where a stored value becomes what a person reads: thin spaces between thousands, a
 * true minus sign, unambiguous dates. Numbers and their units are held together by no-break spaces.
 * What is not there reads as a dash; zero reads as zero. Templates know it as {@code @measures}.
 */
public class Measures {

  /** Shown where there is no value. */
  public static final String NONE = "–";

  private static final String THIN = "\u202f";
  private static final String SPACE = "\u00a0";
  private static final String MINUS = "\u2212";

  private static final DateTimeFormatter DATE = pattern("d MMM uuuu");
  private static final DateTimeFormatter DAY_MONTH = pattern("d MMM");
  private static final DateTimeFormatter DAY = pattern("d");
  private static final DateTimeFormatter WEEKDAY = pattern("EEEE, d MMM uuuu");
  private static final DateTimeFormatter MONTH = pattern("MMM uuuu");
  private static final DateTimeFormatter MOMENT = pattern("d MMM uuuu, HH:mm");

  private final ZoneId zone;

  /**
   * @param zone where the nursery stands; instants are shown by its wall clock
   */
  public Measures(ZoneId zone) {
    this.zone = zone;
  }

  /** 2391 reads "2 391". */
  public String count(@Nullable Number value) {
    return number(value, 0);
  }

  /** 3 trays, 1 tray. */
  public String counted(long value, String one, String many) {
    return count(value) + SPACE + (value == 1 ? one : many);
  }

  /** 66 of 72. */
  public String share(long part, long whole) {
    return count(part) + " of " + count(whole);
  }

  /** Rounds half up to as many decimals as the trait has; 0.125 with two reads "0.13". */
  public String number(@Nullable Number value, int decimals) {
    if (!isFinite(value)) {
      return NONE;
    }
    BigDecimal rounded = exact(value).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() < 0 ? MINUS : "") + grouped(rounded.abs());
  }

  /** 12.5 °C; an empty unit leaves the bare number. */
  public String quantity(@Nullable Number value, int decimals, String unit) {
    return withUnit(number(value, decimals), unit);
  }

  /** A difference: "+2.1 weeks", "−0.4 weeks"; what rounds to nothing has no sign. */
  public String signed(@Nullable Number value, int decimals, String unit) {
    if (!isFinite(value)) {
      return NONE;
    }
    boolean more = exact(value).setScale(decimals, RoundingMode.HALF_UP).signum() > 0;
    return withUnit((more ? "+" : "") + number(value, decimals), unit);
  }

  /** A fraction of one as percent with one decimal: 0.917 reads "91.7 %". */
  public String percent(@Nullable Number fraction) {
    return percent(fraction, 1);
  }

  public String percent(@Nullable Number fraction, int decimals) {
    return isFinite(fraction) ? quantity(exact(fraction).movePointRight(2), decimals, "%") : NONE;
  }

  /** A probability with two decimals; never 0.00 or 1.00, which no sample can show. */
  public String chance(@Nullable Number probability) {
    if (!isFinite(probability)) {
      return NONE;
    }
    double p = probability.doubleValue();
    if (p > 0.99) {
      return ">" + SPACE + "0.99";
    }
    return p < 0.01 ? "<" + SPACE + "0.01" : number(p, 2);
  }

  /** Millimetres as stored, shown in centimetres: 1245 reads "124.5 cm". */
  public String cm(@Nullable Number millimetres) {
    return isFinite(millimetres) ? quantity(exact(millimetres).movePointLeft(1), 1, "cm") : NONE;
  }

  /** Millimetres as stored: 62 reads "62 mm". */
  public String mm(@Nullable Number millimetres) {
    return quantity(millimetres, 0, "mm");
  }

  /** 18–21; with a negative end, where a dash would read as a minus, "−3 to 2". */
  public String interval(@Nullable Number low, @Nullable Number high, int decimals) {
    if (!isFinite(low) || !isFinite(high)) {
      return NONE;
    }
    String from = number(low, decimals);
    String to = number(high, decimals);
    return (from + to).contains(MINUS) ? from + " to " + to : from + "–" + to;
  }

  /** 14 May 2026. */
  public String date(@Nullable LocalDate date) {
    return day(date);
  }

  /** The same for sentences that are written where no page is: refusals, questions. */
  public static String day(@Nullable LocalDate date) {
    return date == null ? NONE : spaced(DATE.format(date));
  }

  /** 14 May, where the year is plain from what stands around it. */
  public String dayMonth(@Nullable LocalDate date) {
    return date == null ? NONE : spaced(DAY_MONTH.format(date));
  }

  /** 14 May in the year of the other day, otherwise with its own year. */
  public String near(LocalDate date, LocalDate today) {
    return date.getYear() == today.getYear() ? dayMonth(date) : date(date);
  }

  /** Thursday, 14 May 2026. */
  public String weekday(LocalDate date) {
    return spaced(WEEKDAY.format(date));
  }

  /** Jul 2026. */
  public String month(@Nullable YearMonth month) {
    return month == null ? NONE : spaced(MONTH.format(month));
  }

  /** Both ends included: 3–14 May 2026, 20 Apr – 10 May 2026, 20 Dec 2025 – 3 Jan 2026. */
  public String dates(@Nullable LocalDate from, @Nullable LocalDate to) {
    if (from == null || to == null || from.equals(to)) {
      return date(from == null ? to : from);
    }
    if (from.getYear() != to.getYear()) {
      return date(from) + " – " + date(to);
    }
    return from.getMonth() == to.getMonth()
        ? DAY.format(from) + "–" + date(to)
        : dayMonth(from) + " – " + date(to);
  }

  /** 14 May 2026, 14:02 by the nursery's clock. */
  public String moment(@Nullable Instant instant) {
    return instant == null ? NONE : spaced(MOMENT.format(instant.atZone(zone)));
  }

  private static boolean isFinite(@Nullable Number value) {
    return value != null && Double.isFinite(value.doubleValue());
  }

  private static BigDecimal exact(Number value) {
    return value instanceof BigDecimal decimal ? decimal : new BigDecimal(value.toString());
  }

  private static String grouped(BigDecimal value) {
    String plain = value.toPlainString();
    int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
    StringBuilder text = new StringBuilder(plain);
    for (int at = point - 3; at > 0; at -= 3) {
      text.insert(at, THIN);
    }
    return text.toString();
  }

  private static String withUnit(String number, String unit) {
    return number.equals(NONE) || unit.isEmpty() ? number : number + SPACE + unit;
  }

  private static String spaced(String text) {
    return text.replace(" ", SPACE);
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
