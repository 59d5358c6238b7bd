package trialwood.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.util.ReflectionTestUtils;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.record.Recorded;
import trialwood.record.Refused;

/** Sheets of four patches, A to D, in several editions: common practice, no source. */
class ChartColourTest {

  @ParameterizedTest
  @ValueSource(strings = {"84B 2015", "N155D 2007", "NN137A 2015", "lilac, red at the eye"})
  void a_colour_is_a_patch_of_a_dated_chart_or_told_in_words(String colour) {
    assertThat(seen(colour).reading().text()).isEqualTo(colour);
  }

  @ParameterizedTest
  @ValueSource(strings = {"84E", "84E 2015", "84B", "84 2015", "84b 2015", "8484B 2015"})
  void a_patch_that_is_on_no_chart_or_of_no_edition_is_refused(String colour) {
    assertThatThrownBy(() -> seen(colour))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("A to D and the year of the edition");
  }

  private static Observation seen(String colour) {
    Trait flower =
        new Trait(
            UUID.randomUUID(),
            "FLCOL",
            "Flower colour",
            TraitKind.COLOUR,
            null,
            null,
            null,
            0,
            Better.NEITHER,
            null,
            null,
            Set.of("plant"),
            null,
            true);
    ReflectionTestUtils.setField(flower, "id", UUID.randomUUID());
    return new Observation(
        UUID.randomUUID(),
        flower,
        LocalDate.of(2025, 8, 7),
        Reading.of(colour),
        null,
        new Recorded(null, "bench", Instant.EPOCH));
  }
}
