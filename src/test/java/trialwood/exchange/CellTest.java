package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.sql.Date;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.lineage.AccessionKind;
import trialwood.record.Refused;

class CellTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Column<Integer> ROOTED = Column.count("rooted", "rooted cuttings");
  private static final Column<LocalDate> ON = Column.past("on", "day");
  private static final Column<String> NOTE = Column.note();

  @Test
  void a_count_is_digits() {
    assertThat(ROOTED.read(" 24 ", TODAY)).isEqualTo(24);
    assertThat(ROOTED.read("0", TODAY)).isZero();
  }

  @Test
  void nothing_said_is_not_zero() {
    assertThat(ROOTED.read("  ", TODAY)).isNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"-", "n/a", "20%", "1,5", "1.5", "circa 30", "-3", "twelve", "1e3", "NaN"})
  void what_is_no_count_is_refused_with_an_example(String typed) {
    assertThatThrownBy(() -> ROOTED.read(typed, TODAY))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("for example 24");
  }

  @ParameterizedTest
  @ValueSource(strings = {"03/04/2025", "3.4.2025", "2025-4-3", "2025-02-30", "45750", "yesterday"})
  void a_day_that_can_be_read_two_ways_or_none_is_refused_with_an_example(String typed) {
    assertThatThrownBy(() -> ON.read(typed, TODAY))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("2025-04-03 for 3 April 2025");
  }

  @Test
  void a_record_of_tomorrow_is_refused() {
    assertThat(ON.read("2026-11-25", TODAY)).isEqualTo(TODAY);
    assertThatThrownBy(() -> ON.read("2026-11-26", TODAY)).hasMessageContaining("has not come");
  }

  @Test
  void a_number_keeps_its_sign_and_is_never_rounded_silently() {
    Column<BigDecimal> litres = Column.decimal("litres", 8, 3, "litres");
    assertThat(litres.read("-2.491", TODAY)).isEqualByComparingTo("-2.491");
    assertThatThrownBy(() -> litres.read("2,491", TODAY)).hasMessageContaining("for example 1.5");
    assertThatThrownBy(() -> litres.read("2.4912", TODAY)).hasMessageContaining("3 after it");
    assertThatThrownBy(() -> litres.read("123456", TODAY)).hasMessageContaining("5 digits before");
  }

  @Test
  void a_note_too_long_is_refused_with_its_length() {
    assertThatThrownBy(() -> NOTE.read("x".repeat(5000), TODAY))
        .hasMessage("At most 300 letters; this has 5,000.");
  }

  @Test
  void a_required_cell_says_what_belongs_into_it() {
    assertThatThrownBy(() -> ROOTED.required().read("", TODAY))
        .hasMessage("This cell must be filled: rooted cuttings.");
  }

  @Test
  void a_choice_is_read_by_its_words_and_written_with_them() {
    Column<AccessionKind> kind = Column.choice("kind", AccessionKind.class, "kind");
    assertThat(kind.read("Seed parent", TODAY)).isEqualTo(AccessionKind.SEED_PARENT);
    assertThat(kind.write("SEED_PARENT")).isEqualTo("seed parent");
    assertThatThrownBy(() -> kind.read("tree", TODAY)).hasMessageContaining("wild plant");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+49 30", "-dead", "@home", "'=1", "plain", "a-b", "'quoted'"})
  void a_text_goes_out_harmless_and_comes_back_as_it_was(String text) {
    String cell = NOTE.write(text);
    assertThat(cell).doesNotMatch("(?s)[=+@\\t\\r-].*");
    assertThat(NOTE.read(cell, TODAY)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"-5.50, -5.5", "0.000, 0", "1200, 1200", "1E+3, 1000"})
  void a_real_number_goes_out_as_it_is(BigDecimal number, String cell) {
    assertThat(Cell.of(number)).isEqualTo(cell);
  }

  @Test
  void days_and_answers_go_out_as_they_come_in() {
    assertThat(Cell.of(Date.valueOf("2025-04-03"))).isEqualTo("2025-04-03");
    assertThat(Cell.of(true)).isEqualTo("yes");
    assertThat(Cell.of(null)).isEmpty();
  }
}
