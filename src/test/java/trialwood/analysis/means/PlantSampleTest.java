package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.inference.DataDispersion;
import org.apache.commons.statistics.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.reference.DataFile;
import trialwood.analysis.reference.ReferenceFolder;

class PlantSampleTest {

  /** Student (1908): extra sleep of ten patients on two drugs, in hours, from memory. */
  private static final double[] DRUG_1 = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};

  private static final double[] DRUG_2 = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

  @Test
  void the_coefficient_of_variation_is_the_spread_over_the_mean() {
    // mean 40, standard deviation 7: 17.5 %, by definition
    PlantSample sample = PlantSample.of(33, 40, 47);
    assertThat(sample.sd().value()).hasValue(7.0);
    assertThat(sample.cv().value()).hasValue(0.175);
  }

  @Test
  void one_plant_has_a_mean_and_says_what_it_lacks() {
    PlantSample one = PlantSample.of(412.0);
    assertThat(one.mean()).isEqualTo(412);
    assertThat(one.sd().lack()).hasValue("The spread needs at least two plants.");
    assertThat(one.beliefOfMean().lack()).isPresent();
    assertThat(SampleDifference.between(one, PlantSample.of(400, 410)).lack())
        .hasValue("A difference needs at least two plants of each.");
  }

  @Test
  void a_mean_that_is_not_positive_has_no_coefficient_of_variation() {
    assertThat(PlantSample.of(-1, 1).cv().lack()).isPresent();
    assertThat(PlantSample.of(-1, 1).sd().value()).isPresent();
  }

  @Test
  void the_interval_of_the_mean_is_students() {
    StudentBelief belief = PlantSample.of(DRUG_2).beliefOfMean().value().orElseThrow();
    double p = TTest.withDefaults().test(DRUG_2).getPValue();
    assertThat(2 * (1 - belief.chanceAtLeast(0))).isCloseTo(p, within(1e-12));
  }

  @Test
  void the_difference_of_two_samples_is_students() {
    // R's t.test(extra ~ group, data = sleep, var.equal = TRUE), from memory:
    // t = -1.8608, df = 18, p = 0.07919, 95 % interval -3.363874 to 0.203874
    SampleDifference difference = difference(DRUG_1, DRUG_2);
    StudentBelief belief = difference.difference();
    assertThat(belief.estimate() / belief.standardError()).isCloseTo(-1.8608, within(5e-5));
    assertThat(belief.degreesOfFreedom()).isEqualTo(18);
    assertThat(2 * difference.chanceAtLeast(0)).isCloseTo(0.07919, within(5e-6));
    assertThat(difference.interval(0.95).low()).isCloseTo(-3.363874, within(5e-7));
    assertThat(difference.interval(0.95).high()).isCloseTo(0.203874, within(5e-7));
  }

  @Test
  void the_difference_agrees_with_a_library_test_on_open_data() {
    for (String treatment : List.of("trt1", "trt2")) {
      PlantSample treated = group(treatment);
      PlantSample control = group("ctrl");
      StudentBelief belief =
          SampleDifference.between(treated, control).value().orElseThrow().difference();
      double t =
          TTest.withDefaults()
              .with(DataDispersion.HOMOSCEDASTIC)
              .statistic(
                  treated.mean(),
                  square(treated.sd().value().orElseThrow()),
                  treated.n(),
                  control.mean(),
                  square(control.sd().value().orElseThrow()),
                  control.n());
      assertThat(belief.estimate() / belief.standardError()).isCloseTo(t, within(1e-12));
      assertThat(belief.chanceAtLeast(0))
          .isCloseTo(
              TDistribution.of(treated.n() + control.n() - 2).cumulativeProbability(t),
              within(1e-12));
    }
  }

  @Test
  void plants_all_alike_differ_by_exactly_their_means() {
    SampleDifference difference = difference(new double[] {5, 5}, new double[] {3, 3, 3});
    assertThat(difference.interval(0.95)).isEqualTo(new Interval(2, 2, 0.95));
    assertThat(difference.chanceAtLeast(2)).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void a_measurement_that_is_no_number_is_refused(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> PlantSample.of(1, value));
  }

  @Test
  void an_empty_sample_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PlantSample.of(List.of()))
        .withMessage("No plant has been measured.");
  }

  private static SampleDifference difference(double[] one, double[] other) {
    return SampleDifference.between(PlantSample.of(one), PlantSample.of(other))
        .value()
        .orElseThrow();
  }

  private static PlantSample group(String treatment) {
    DataFile data = ReferenceFolder.ours().data("data-plantgrowth-missing.csv");
    List<String> groups = data.text("group");
    double[] weights = data.numbers("weight");
    return PlantSample.of(
        IntStream.range(0, weights.length)
            .filter(i -> groups.get(i).equals(treatment) && !Double.isNaN(weights[i]))
            .mapToDouble(i -> weights[i])
            .toArray());
  }

  private static double square(double x) {
    return x * x;
  }
}
