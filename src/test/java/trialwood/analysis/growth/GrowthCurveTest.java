package trialwood.analysis.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;
import trialwood.analysis.StraightLine;

class GrowthCurveTest {

  @Test
  void steady_doubling_has_one_relative_rate_everywhere() {
    GrowthCurve curve = curve(0, 2, 1, 4, 2, 8, 3, 16);
    assertThat(curve.relativeRate().value().orElseThrow()).isCloseTo(Math.log(2), within(1e-12));
    assertThat(curve.relativeLine().value().orElseThrow().slope())
        .isCloseTo(Math.log(2), within(1e-12));
    assertThat(curve.relativeRates().value().orElseThrow())
        .hasSize(3)
        .allSatisfy(between -> assertThat(between.rate()).isCloseTo(Math.log(2), within(1e-12)));
  }

  @Test
  void readings_may_come_in_any_order() {
    assertThat(curve(7, 3, 0, 1, 14, 9)).isEqualTo(curve(0, 1, 7, 3, 14, 9));
  }

  @Test
  void a_single_reading_has_no_rate() {
    GrowthCurve curve = curve(7, 3);
    assertThat(curve.area()).isZero();
    assertThat(curve.absoluteRate()).isInstanceOf(Answer.Lacking.class);
    assertThat(curve.relativeRate()).isInstanceOf(Answer.Lacking.class);
    assertThat(curve.relativeRates()).isInstanceOf(Answer.Lacking.class);
    assertThat(curve.line()).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void a_plant_cut_to_the_ground_has_no_relative_rate() {
    GrowthCurve curve = curve(0, 20, 7, 0, 14, 5);
    assertThat(curve.relativeRate().value()).isPresent();
    assertThat(curve.relativeLine()).isInstanceOf(Answer.Lacking.class);
    assertThat(curve.relativeRates()).isInstanceOf(Answer.Lacking.class);
    assertThat(curve(0, 20, 7, 0).relativeRate()).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void a_line_through_two_readings_has_no_error_and_a_plant_that_stands_still_no_share() {
    StraightLine two = curve(0, 1, 2, 5).line().value().orElseThrow();
    assertThat(two.slope()).isEqualTo(2);
    assertThat(two.slopeError()).isInstanceOf(Answer.Lacking.class);
    assertThat(two.residualSd()).isInstanceOf(Answer.Lacking.class);
    StraightLine still = curve(0, 0.1, 1, 0.1, 2, 0.1).line().value().orElseThrow();
    assertThat(still.rSquared()).isInstanceOf(Answer.Lacking.class);
    assertThat(still.slopeError().value()).contains(0.0);
  }

  @Test
  void impossible_readings_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> curve(1, 2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> GrowthCurve.of(List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new Reading(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Reading(1, Double.POSITIVE_INFINITY));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StraightLine.through(new double[2], new double[3]));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void a_severity_read_half_way_on_the_line_changes_no_area(int seed) {
    Random random = new Random(seed);
    var readings = new ArrayList<Reading>();
    double day = 0;
    for (int i = 0; i < 6; i++) {
      readings.add(new Reading(day, 100 * random.nextDouble()));
      day += 1 + 10 * random.nextDouble();
    }
    double area = DiseaseProgress.of(readings).value().orElseThrow().area();
    Reading from = readings.get(2);
    Reading to = readings.get(3);
    readings.add(new Reading((from.time() + to.time()) / 2, (from.value() + to.value()) / 2));
    assertThat(DiseaseProgress.of(readings).value().orElseThrow().area())
        .isCloseTo(area, within(1e-9));
  }

  @Test
  void a_plant_always_wholly_diseased_has_the_relative_area_one() {
    DiseaseProgress worst = disease(0, 100, 7, 100, 30, 100);
    assertThat(worst.relativeArea()).isEqualTo(1);
    assertThat(disease(0, 0, 7, 50, 30, 50).against(worst).value().orElseThrow())
        .isCloseTo((3.5 * 50 + 23 * 50) / 3000, within(1e-12));
  }

  @Test
  void a_clean_check_says_nothing() {
    DiseaseProgress clean = disease(0, 0, 30, 0);
    assertThat(disease(0, 1, 30, 2).against(clean)).isInstanceOf(Answer.Lacking.class);
    assertThat(disease(0, 1, 20, 2).against(disease(0, 5, 30, 9)))
        .isInstanceOf(Answer.Lacking.class);
    assertThat(DiseaseProgress.of(List.of(new Reading(1, 1)))).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void a_severity_beyond_one_hundred_per_cent_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> disease(0, 1, 7, 101));
    assertThatIllegalArgumentException().isThrownBy(() -> disease(0, -1, 7, 10));
  }

  @Test
  void a_severity_falls_in_the_grade_that_reaches_it() {
    // ends of the classes belong to the lower grade: our convention
    assertThat(HorsfallBarratt.of(0).grade()).isZero();
    assertThat(HorsfallBarratt.of(3).grade()).isEqualTo(1);
    assertThat(HorsfallBarratt.of(3.1).grade()).isEqualTo(2);
    assertThat(HorsfallBarratt.of(99.9).grade()).isEqualTo(10);
    assertThat(HorsfallBarratt.of(100).grade()).isEqualTo(11);
    assertThatIllegalArgumentException().isThrownBy(() -> new HorsfallBarratt(12));
    assertThatIllegalArgumentException().isThrownBy(() -> HorsfallBarratt.of(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> HorsfallBarratt.of(Double.NaN));
  }

  private static DiseaseProgress disease(double... daysAndSeverities) {
    return new DiseaseProgress(curve(daysAndSeverities));
  }

  private static GrowthCurve curve(double... timesAndValues) {
    var readings = new ArrayList<Reading>();
    for (int i = 0; i < timesAndValues.length; i += 2) {
      readings.add(new Reading(timesAndValues[i], timesAndValues[i + 1]));
    }
    return GrowthCurve.of(readings);
  }
}
