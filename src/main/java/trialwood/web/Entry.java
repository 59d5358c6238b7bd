package trialwood.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import trialwood.record.Problem;
import trialwood.record.Refused;

/**
 * Reads the boxes of one form. What cannot be read is noted beside its box, and a stand-in is
 * returned so that the rest can be read too; {@link #orRefuse()} comes before anything is done with
 * the values.
 */
public final class Entry {

  private final List<Problem> problems = new ArrayList<>();

  /** A whole number from zero up that must be there. */
  public int count(String field, @Nullable String text) {
    if (isBlank(text)) {
      problems.add(new Problem(field, "Type a number; 0 if there are none."));
      return 0;
    }
    return readCount(field, text);
  }

  /** A whole number from zero up, or nothing. */
  public @Nullable Integer countIfAny(String field, @Nullable String text) {
    return isBlank(text) ? null : readCount(field, text);
  }

  /** A number with or without decimals, or nothing. */
  public @Nullable BigDecimal decimalIfAny(String field, @Nullable String text) {
    if (isBlank(text)) {
      return null;
    }
    Optional<BigDecimal> number = Typed.decimal(text);
    if (number.isEmpty()) {
      wrong(field, "“%s” is not a number. Type it like 12.5.".formatted(text.strip()));
    }
    return number.orElse(null);
  }

  /** A day that must be there. */
  public LocalDate day(String field, @Nullable String text, LocalDate today) {
    return isBlank(text)
        ? missing(field, "Type the day, for example 14 May 2026.", today)
        : Typed.date(text, today)
            .orElseGet(() -> missing(field, "Type the day like 14 May 2026 or 2026-05-14.", today));
  }

  /** A time of day that must be there. */
  public LocalTime time(String field, @Nullable String text) {
    return Typed.time(isBlank(text) ? "" : text)
        .orElseGet(() -> missing(field, "Type the time like 9:30 or 14:05.", LocalTime.MIDNIGHT));
  }

  /** A day, or nothing. */
  public @Nullable LocalDate dayIfAny(String field, @Nullable String text, LocalDate today) {
    return isBlank(text) ? null : day(field, text, today);
  }

  /** Words that must be there. */
  public String words(String field, @Nullable String text, String orElseSay) {
    return isBlank(text) ? missing(field, orElseSay, "") : text.strip();
  }

  /** Words, or nothing. */
  public static @Nullable String wordsIfAny(@Nullable String text) {
    return isBlank(text) ? null : text.strip();
  }

  /** One of a list, by what a page sent. */
  public UUID id(String field, @Nullable String text, String orElseSay) {
    try {
      return UUID.fromString(isBlank(text) ? "" : text);
    } catch (IllegalArgumentException unreadable) {
      return missing(field, orElseSay, new UUID(0, 0));
    }
  }

  /** The person whose initials were picked, or nobody. */
  public @Nullable UUID person(String field, @Nullable String text) {
    return isBlank(text) ? null : id(field, text, "Pick the initials from the list.");
  }

  /**
   * A value that guards itself, so that what it refuses is said together with the rest.
   *
   * @param standIn returned where the value refuses what was read
   */
  public <T> T guarded(Supplier<T> value, T standIn) {
    try {
      return value.get();
    } catch (Refused refused) {
      problems.addAll(refused.problems());
      return standIn;
    }
  }

  /** Says what is wrong with a field that was read. */
  public void wrong(String field, String sentence) {
    problems.add(new Problem(field, sentence));
  }

  /**
   * @throws Refused when anything could not be read
   */
  public void orRefuse() {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }

  private int readCount(String field, String text) {
    return Typed.count(text)
        .orElseGet(
            () -> missing(field, "“%s” is not a count. Type digits, like 24.".formatted(text), 0));
  }

  private <T> T missing(String field, String sentence, T standIn) {
    problems.add(new Problem(field, sentence));
    return standIn;
  }

  private static boolean isBlank(@Nullable String text) {
    return text == null || text.isBlank();
  }
}
