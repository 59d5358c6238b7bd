package trialwood.container.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;
import trialwood.record.Refused;
import trialwood.web.Typed;

/**
 * Reads the boxes of a form. What cannot be read is said beside the box, and something harmless is
 * handed on: a form with something wrong is not stored.
 */
record Boxes(BindingResult said, LocalDate today) {

  /**
   * For a form whose hidden or chosen parts were tampered with: nothing of it can be shown again.
   */
  static Refused unreadable() {
    return new Refused("form", "This form could not be read. Open it afresh.");
  }

  LocalDate date(String box, @Nullable String typed) {
    return Typed.date(text(typed), today)
        .orElseGet(
            () -> {
              wrong(box, "Write the date as 14 May 2026, 2026-05-14 or today.");
              return today;
            });
  }

  int count(String box, @Nullable String typed, String sentence) {
    OptionalInt read = Typed.count(text(typed));
    if (read.isEmpty()) {
      wrong(box, sentence);
    }
    return read.orElse(0);
  }

  /** An empty box says nothing. */
  @Nullable Integer countIfAny(String box, @Nullable String typed) {
    return text(typed).isEmpty() ? null : count(box, typed, "Write a whole number, such as 20.");
  }

  /** An empty box says nothing. */
  @Nullable BigDecimal decimalIfAny(String box, @Nullable String typed) {
    if (text(typed).isEmpty()) {
      return null;
    }
    return Typed.decimal(text(typed))
        .orElseGet(
            () -> {
              wrong(box, "Write a number, such as 2.8 or 2,8.");
              return BigDecimal.ONE;
            });
  }

  /** Words, or nothing for an empty box. */
  static @Nullable String words(@Nullable String typed) {
    String text = text(typed);
    return text.isEmpty() ? null : text;
  }

  static String text(@Nullable String typed) {
    return typed == null ? "" : typed.strip();
  }

  UUID chosen(String box, @Nullable UUID choice, String sentence) {
    if (choice == null) {
      wrong(box, sentence);
      return new UUID(0, 0);
    }
    return choice;
  }

  void wrong(String box, String sentence) {
    said.rejectValue(box, "wrong", sentence);
  }
}
