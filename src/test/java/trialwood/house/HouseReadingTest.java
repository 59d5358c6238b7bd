package trialwood.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.record.Recorded;

/** What is refused and asked about of a propagation house: common practice, no source. */
class HouseReadingTest {

  private static final Instant NOON = Instant.parse("2026-06-10T12:00:00Z");

  private static House house(boolean propagates) {
    return new House("mist house", propagates, null) {
      @Override
      public UUID id() {
        return new UUID(1, 1);
      }
    };
  }

  private static NewReading read(@Nullable String air, @Nullable String medium) {
    return new NewReading(NOON, number(air), number(medium), null, null, null, null, null);
  }

  private static NewReading mist(@Nullable Integer on, @Nullable Integer every) {
    return new NewReading(NOON, null, null, null, null, on, every, null);
  }

  private static @Nullable BigDecimal number(@Nullable String text) {
    return text == null ? null : new BigDecimal(text);
  }

  private static HouseReading stored(boolean propagates, NewReading said) {
    return new HouseReading(house(propagates), said, null, new Recorded(null, "bench", NOON));
  }

  @ParameterizedTest
  @CsvSource({"-0.1,", "50.1,", ",-3", ",51"})
  void frost_or_an_oven_where_cuttings_stand_is_refused(
      @Nullable String air, @Nullable String medium) {
    assertThatThrownBy(() -> stored(true, read(air, medium))).hasMessageContaining("0 to 50 °C");
  }

  @Test
  void frost_in_a_cold_house_is_a_reading() {
    assertThat(stored(false, read("-12.5", "-4")).mediumCelsius()).isEqualByComparingTo("-4");
  }

  @ParameterizedTest
  @CsvSource({"15.9,1", "16,0", "29,0", "29.1,1"})
  void a_medium_outside_16_to_29_is_asked_about(String medium, int questions) {
    assertThat(HouseReading.questions(house(true), read(null, medium))).hasSize(questions);
  }

  @Test
  void air_above_38_is_asked_about() {
    assertThat(HouseReading.questions(house(true), read("38.5", null))).hasSize(1);
    assertThat(HouseReading.questions(house(false), read("45", null))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"6,6", "600,300"})
  void mist_that_runs_as_long_as_its_interval_is_refused(int on, int every) {
    assertThatThrownBy(() -> stored(true, mist(on, every)))
        .hasMessageContaining("cannot run longer");
  }

  @Test
  void mist_needs_both_numbers() {
    assertThatThrownBy(() -> stored(true, mist(6, null))).hasMessageContaining("needs both");
    assertThatCode(() -> stored(true, mist(6, 480))).doesNotThrowAnyException();
  }

  @Test
  void a_reading_that_says_nothing_is_refused() {
    assertThatThrownBy(() -> stored(true, read(null, null)))
        .hasMessageContaining("at least one value");
  }
}
