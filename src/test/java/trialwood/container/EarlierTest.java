package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;

class EarlierTest {

  private static final LocalDate JULY = LocalDate.of(2022, 7, 20);
  private static final LocalDate OCTOBER = LocalDate.of(2022, 10, 12);

  private static Trait trait(String unit) {
    return new Trait(
        UUID.randomUUID(),
        "HEIGHT",
        "Plant height",
        TraitKind.MEASUREMENT,
        unit,
        BigDecimal.ONE,
        new BigDecimal("600"),
        0,
        Better.HIGHER,
        null,
        null,
        Set.of("plant"),
        null,
        false);
  }

  private static Optional<String> after(String last, String now) {
    return new Earlier(JULY, new BigDecimal(last))
        .question(trait("cm"), new BigDecimal(now), OCTOBER);
  }

  // one inch is 2.54 cm exactly: international yard and pound agreement, 1959
  @Test
  void a_height_of_24_after_61_cm_is_asked_about_as_inches() {
    assertThat(after("61", "24"))
        .contains("24 in = 61 cm? The last was 61 cm, on 20\u00a0Jul\u00a02022.");
  }

  @Test
  void a_height_of_61_after_24_asks_whether_the_last_was_in_inches() {
    assertThat(after("24", "61").orElseThrow()).startsWith("24 in = 61 cm?");
  }

  @Test
  void a_plant_that_shrank_within_the_season_is_asked_about() {
    assertThat(after("61", "50"))
        .contains("50 cm, and 61 cm on 20\u00a0Jul\u00a02022: did it shrink?");
  }

  @ParameterizedTest
  @CsvSource({"61, 61", "61, 58", "30, 61", "61, 100"})
  void growth_is_not_asked_about(String last, String now) {
    assertThat(after(last, now)).isEmpty();
  }

  @Test
  void a_plant_cut_back_over_the_winter_is_not_asked_about() {
    assertThat(
            new Earlier(JULY, new BigDecimal("61"))
                .question(trait("cm"), new BigDecimal("50"), OCTOBER.plusYears(1)))
        .isEmpty();
  }

  @Test
  void only_lengths_in_centimetres_are_asked_about() {
    assertThat(
            new Earlier(JULY, new BigDecimal("61"))
                .question(trait("%"), new BigDecimal("24"), OCTOBER))
        .isEmpty();
  }
}
