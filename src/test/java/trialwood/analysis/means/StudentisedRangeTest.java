package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentisedRangeTest {

  @ParameterizedTest
  @CsvSource({"1", "2", "3.7", "25", "1000"})
  void two_means_are_students_t_times_the_root_of_two(double df) {
    StudentisedRange range = StudentisedRange.of(2, df);
    TDistribution t = TDistribution.of(df);
    for (double q : new double[] {0.1, 1, 3, 8, 20}) {
      assertThat(range.survivalProbability(q))
          .isCloseTo(2 * t.survivalProbability(q / Math.sqrt(2)), within(1e-12));
    }
  }

  @ParameterizedTest
  @CsvSource({"3", "8"})
  void a_known_error_leaves_the_range_of_normal_variables(int means) {
    // three and more: against the plain double sum over a fine grid of the least value
    double r = 3;
    double chance = 0;
    NormalDistribution normal = NormalDistribution.of(0, 1);
    for (double z = -9; z < 9; z += 0.001) {
      chance +=
          0.001 * means * normal.density(z) * Math.pow(normal.probability(z, z + r), means - 1);
    }
    assertThat(StudentisedRange.of(means, Double.POSITIVE_INFINITY).cumulativeProbability(r))
        .isCloseTo(chance, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "2, 1",
    "3, 2",
    "3, 4.5",
    "5, 10",
    "10, 20",
    "40, 60",
    "100, 5",
    "3, Infinity",
    "20, Infinity"
  })
  void the_quantile_is_the_inverse_of_the_cumulative_probability(int means, double df) {
    StudentisedRange range = StudentisedRange.of(means, df);
    for (double p : new double[] {0.01, 0.5, 0.9, 0.95, 0.999}) {
      assertThat(range.cumulativeProbability(range.quantile(p))).isCloseTo(p, within(1e-10));
    }
  }

  @Test
  void more_means_and_fewer_degrees_of_freedom_widen_the_range() {
    assertThat(StudentisedRange.of(4, 10).quantile(0.95))
        .isGreaterThan(StudentisedRange.of(3, 10).quantile(0.95))
        .isLessThan(StudentisedRange.of(4, 5).quantile(0.95));
  }

  @Test
  void nothing_lies_below_zero_and_everything_below_infinity() {
    StudentisedRange range = StudentisedRange.of(4, 6);
    assertThat(range.cumulativeProbability(0)).isZero();
    assertThat(range.cumulativeProbability(-1)).isZero();
    assertThat(range.cumulativeProbability(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }

  @Test
  void small_chances_keep_their_digits() {
    // Student: 2 Pr(t > 17/√2) on 30 df, about 5e-13
    double t = 2 * TDistribution.of(30).survivalProbability(17 / Math.sqrt(2));
    assertThat(StudentisedRange.of(2, 30).survivalProbability(17) / t).isCloseTo(1, within(1e-6));
  }

  @Test
  void one_mean_no_degrees_of_freedom_and_a_sure_probability_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> StudentisedRange.of(1, 10));
    assertThatIllegalArgumentException().isThrownBy(() -> StudentisedRange.of(3, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> StudentisedRange.of(3, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> StudentisedRange.of(3, 10).quantile(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StudentisedRange.of(3, 10).survivalProbability(Double.NaN));
  }
}
