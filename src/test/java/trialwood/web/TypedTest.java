package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 5, 14);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"3.5|3.5", "3,5|3.5", "'1 250'|1250", "−2|-2", "-2|-2", ".5|0.5", "7.|7", "+1|1"})
  void a_decimal_may_have_a_point_or_a_comma(String typed, BigDecimal value) {
    assertThat(Typed.decimal(typed))
        .hasValueSatisfying(v -> assertThat(v).isEqualByComparingTo(value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "abc", "3,5.1", "1e9", "NaN", "12345678901234", "--1", "1,250,000"})
  void what_is_no_decimal_is_not_guessed(String typed) {
    assertThat(Typed.decimal(typed)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1", "24.0", "two", "9999999999", "٣٤x"})
  void what_is_no_count_is_not_guessed(String typed) {
    assertThat(Typed.count(typed)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0,0", "' 24 ',24", "2 391,2391"})
  void a_count_is_whole_and_not_below_zero(String typed, int value) {
    assertThat(Typed.count(typed)).hasValue(value);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-14,2026-05-14",
    "14 May 2026,2026-05-14",
    "14 may 2025,2025-05-14",
    "' 3  September 2025',2025-09-03",
    "3 jun,2026-06-03",
    "29 Feb 2024,2024-02-29",
    "today,2026-05-14",
    "Yesterday,2026-05-13"
  })
  void a_date_is_read_as_people_write_it(String typed, LocalDate date) {
    assertThat(Typed.date(typed, TODAY)).hasValue(date);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "5/6/2026", "31 Feb 2026", "29 Feb", "2026-02-30", "14 Mai 2026", "14"})
  void a_date_that_is_not_plain_is_refused(String typed) {
    assertThat(Typed.date(typed, TODAY)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"14\u00a0May\u00a02026"})
  void a_date_as_shown_can_be_typed_again(String shown) {
    assertThat(Typed.date(shown, TODAY)).hasValue(TODAY);
  }

  @ParameterizedTest
  @CsvSource({"9:30,09:30", "09.30,09:30", "0930,09:30", "14h05,14:05", "' 0:00 ',00:00"})
  void a_time_of_day_is_read_by_the_clock_of_24_hours(String typed, LocalTime time) {
    assertThat(Typed.time(typed)).hasValue(time);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "24:00", "9:60", "half past nine", "9", "9:30 pm"})
  void what_is_no_time_of_day_is_not_guessed(String typed) {
    assertThat(Typed.time(typed)).isEmpty();
  }
}
