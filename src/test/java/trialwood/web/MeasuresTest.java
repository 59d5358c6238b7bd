package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuresTest {

  private final Measures measures = new Measures(ZoneId.of("Europe/Vienna"));

  @ParameterizedTest
  @CsvSource({"0,0", "999,999", "2391,2 391", "-2391,−2 391", "1234567,1 234 567"})
  void a_count_has_thin_spaces_between_thousands(long value, String shown) {
    assertThat(plain(measures.count(value))).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"0.125,2,0.13", "2.5,0,3", "-0.04,1,0.0", "-0.4,1,−0.4", "1234.5,1,1 234.5"})
  void a_number_is_rounded_half_up_to_the_decimals_of_its_trait(
      double value, int decimals, String shown) {
    assertThat(plain(measures.number(value, decimals))).isEqualTo(shown);
  }

  @Test
  void a_decimal_is_rounded_as_written_and_not_by_way_of_a_double() {
    assertThat(measures.number(new BigDecimal("1.005"), 2)).isEqualTo("1.01");
  }

  @ParameterizedTest
  @CsvSource({
    "2.1,+2.1 weeks",
    "-2.1,−2.1 weeks",
    "0,0.0 weeks",
    "0.04,0.0 weeks",
    "-0.04,0.0 weeks"
  })
  void a_difference_shows_its_sign_unless_it_rounds_to_nothing(double value, String shown) {
    assertThat(plain(measures.signed(value, 1, "weeks"))).isEqualTo(shown);
  }

  @Test
  void a_share_is_shown_as_percent_and_as_counts() {
    assertThat(plain(measures.percent(66 / 72.0))).isEqualTo("91.7 %");
    assertThat(plain(measures.percent(0.5, 0))).isEqualTo("50 %");
    assertThat(measures.share(66, 72)).isEqualTo("66 of 72");
    assertThat(plain(measures.counted(1, "tray", "trays"))).isEqualTo("1 tray");
    assertThat(plain(measures.counted(1200, "tray", "trays"))).isEqualTo("1 200 trays");
  }

  @ParameterizedTest
  @CsvSource({
    "0.96,0.96",
    "0.5,0.50",
    "0.99,0.99",
    "0.9901,> 0.99",
    "1,> 0.99",
    "0.004,< 0.01",
    "0,< 0.01"
  })
  void a_chance_is_never_shown_as_certain(double p, String shown) {
    assertThat(plain(measures.chance(p))).isEqualTo(shown);
  }

  @Test
  void lengths_stored_in_millimetres_are_shown_as_asked() {
    assertThat(plain(measures.cm(1245))).isEqualTo("124.5 cm");
    assertThat(plain(measures.mm(1245))).isEqualTo("1 245 mm");
  }

  @Test
  void an_interval_below_zero_is_written_with_to() {
    assertThat(measures.interval(18, 21, 0)).isEqualTo("18–21");
    assertThat(measures.interval(-3, 2, 0)).isEqualTo("−3 to 2");
  }

  @Test
  void what_is_not_there_is_a_dash_and_zero_is_zero() {
    assertThat(measures.count(null)).isEqualTo("–");
    assertThat(measures.percent(null)).isEqualTo("–");
    assertThat(measures.quantity(Double.NaN, 1, "cm")).isEqualTo("–");
    assertThat(measures.chance(null)).isEqualTo("–");
    assertThat(measures.date(null)).isEqualTo("–");
    assertThat(measures.interval(1, null, 0)).isEqualTo("–");
    assertThat(measures.count(0)).isEqualTo("0");
  }

  @Test
  void dates_are_written_so_that_day_and_month_cannot_be_mistaken() {
    LocalDate day = LocalDate.of(2026, 5, 14);
    assertThat(plain(measures.date(day))).isEqualTo("14 May 2026");
    assertThat(plain(measures.dayMonth(day))).isEqualTo("14 May");
    assertThat(plain(measures.month(YearMonth.of(2026, 9)))).isEqualTo("Sep 2026");
    assertThat(plain(measures.moment(Instant.parse("2026-05-14T12:02:00Z"))))
        .isEqualTo("14 May 2026, 14:02");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-03,2026-05-14,3–14 May 2026",
    "2026-04-20,2026-05-10,20 Apr – 10 May 2026",
    "2025-12-20,2026-01-03,20 Dec 2025 – 3 Jan 2026",
    "2026-05-03,2026-05-03,3 May 2026",
    "2026-05-03,,3 May 2026"
  })
  void a_range_says_no_more_than_it_must(LocalDate from, LocalDate to, String shown) {
    assertThat(plain(measures.dates(from, to))).isEqualTo(shown);
  }

  @Test
  void a_number_is_not_torn_from_its_unit_at_a_line_end() {
    assertThat(measures.quantity(12, 0, "cm")).isEqualTo("12\u00a0cm");
    assertThat(measures.count(2391)).isEqualTo("2\u202f391");
  }

  private static String plain(String text) {
    return text.replace('\u202f', ' ').replace('\u00a0', ' ');
  }
}
