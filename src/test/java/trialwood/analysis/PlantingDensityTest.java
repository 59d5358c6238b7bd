package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantingDensityTest {

  /**
   * 2 × 10 ft: common practice, no source; the others as in an early 20th-century farm rule book.
   */
  @ParameterizedTest
  @CsvSource({"2,10,2178", "3,10,1452", "3,8,1815", "1.5,6,4840", "2,3,7260", "6,10,726"})
  void plants_per_acre_follow_the_farm_rule(double inRow, double betweenRows, double plants) {
    assertThat(PlantingDensity.feet(inRow, betweenRows).perAcre()).isCloseTo(plants, within(1e-8));
  }

  @Test
  void twelve_thousand_seedlings_at_two_by_ten_feet_need_five_and_a_half_acres() {
    // common practice, no source
    assertThat(PlantingDensity.feet(2, 10).acresFor(12_000)).isCloseTo(5.51, within(0.005));
  }

  @Test
  void three_by_eight_feet_is_the_same_in_metres() {
    PlantingDensity density = PlantingDensity.metres(0.9144, 2.4384);
    assertThat(density.perHectare()).isCloseTo(4485, within(0.5));
    assertThat(density.perAcre()).isCloseTo(PlantingDensity.feet(3, 8).perAcre(), within(1e-8));
    assertThat(density.acresFor(10_000)).isCloseTo(5.51, within(0.005));
    assertThat(density.rowMetresFor(10_000)).isCloseTo(9_144, within(1e-8));
    // one acre is 0.40468564224 ha, by definition of the international foot
    assertThat(density.hectaresFor(10_000) / density.acresFor(10_000))
        .isCloseTo(0.40468564224, within(1e-12));
  }

  @Test
  void no_plants_need_no_land() {
    assertThat(PlantingDensity.feet(3, 8).acresFor(0)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0,8", "3,-1", "NaN,8", "3,Infinity"})
  void an_impossible_distance_is_refused(double inRow, double betweenRows) {
    assertThatIllegalArgumentException().isThrownBy(() -> PlantingDensity.feet(inRow, betweenRows));
  }

  @Test
  void fewer_than_no_plants_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> PlantingDensity.feet(3, 8).acresFor(-1));
  }
}
