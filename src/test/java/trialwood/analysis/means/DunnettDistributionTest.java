package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DunnettDistributionTest {

  @ParameterizedTest
  @CsvSource({"1", "2.5", "30"})
  void one_entry_is_students_t(double df) {
    DunnettDistribution one = DunnettDistribution.ofEqual(1, 0.5, df);
    TDistribution t = TDistribution.of(df);
    assertThat(one.beyond(1.7)).isCloseTo(t.survivalProbability(1.7), within(1e-12));
    assertThat(one.beyond(-1.7)).isCloseTo(t.survivalProbability(-1.7), within(1e-12));
    assertThat(one.beyondOnEitherSide(1.7))
        .isCloseTo(2 * t.survivalProbability(1.7), within(1e-12));
  }

  @Test
  void without_correlation_and_with_a_known_error_the_entries_are_independent() {
    DunnettDistribution free = DunnettDistribution.ofEqual(5, 0, Double.POSITIVE_INFINITY);
    double inside = NormalDistribution.of(0, 1).cumulativeProbability(2);
    assertThat(free.beyond(2)).isCloseTo(1 - Math.pow(inside, 5), within(1e-13));
    assertThat(free.beyondOnEitherSide(2))
        .isCloseTo(1 - Math.pow(2 * inside - 1, 5), within(1e-13));
  }

  @ParameterizedTest
  @CsvSource({"2, 0.5, 2", "5, 0.5, 10", "9, 0.3, Infinity", "4, 0.95, 12", "2, -0.6, 8"})
  void the_quantile_is_the_inverse_of_the_chance(int entries, double rho, double df) {
    DunnettDistribution dunnett = DunnettDistribution.ofEqual(entries, rho, df);
    for (double p : new double[] {0.05, 0.5, 0.95, 0.99}) {
      assertThat(dunnett.beyondOnEitherSide(dunnett.twoSidedQuantile(p)))
          .isCloseTo(1 - p, within(1e-9));
      assertThat(dunnett.beyond(dunnett.oneSidedQuantile(p))).isCloseTo(1 - p, within(1e-9));
    }
  }

  @Test
  void equal_replicates_have_the_correlation_of_one_half() {
    DunnettDistribution plots = DunnettDistribution.ofReplicates(4, new int[] {4, 4, 4}, 12);
    assertThat(plots.twoSidedQuantile(0.95))
        .isCloseTo(DunnettDistribution.ofEqual(3, 0.5, 12).twoSidedQuantile(0.95), within(1e-9));
  }

  @Test
  void a_correlation_that_is_no_product_is_summed_over_the_lattice() {
    // three variables whose orthant has a closed form: Pr(all < 0) = 1/8 + Σ asin ρ / 4π
    // (Stuart and Ord, Kendall's Advanced Theory of Statistics I, 15.10; from memory)
    double[][] correlation = {{1, 0.5, -0.3}, {0.5, 1, 0.2}, {-0.3, 0.2, 1}};
    double inside = 1.0 / 8 + (Math.asin(0.5) + Math.asin(-0.3) + Math.asin(0.2)) / (4 * Math.PI);
    DunnettDistribution general = DunnettDistribution.of(correlation, Double.POSITIVE_INFINITY);
    assertThat(general.beyond(0)).isCloseTo(1 - inside, within(3e-4));
    assertThat(general.beyondOnEitherSide(general.twoSidedQuantile(0.9)))
        .isCloseTo(0.1, within(1e-9));
  }

  @Test
  void the_order_of_the_entries_hardly_matters_on_the_lattice() {
    double[][] one = {{1, 0.5, -0.3}, {0.5, 1, 0.2}, {-0.3, 0.2, 1}};
    double[][] other = {{1, 0.2, -0.3}, {0.2, 1, 0.5}, {-0.3, 0.5, 1}};
    assertThat(DunnettDistribution.of(one, 20).beyondOnEitherSide(2))
        .isCloseTo(DunnettDistribution.of(other, 20).beyondOnEitherSide(2), within(3e-4));
  }

  @Test
  void what_is_no_correlation_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DunnettDistribution.of(new double[][] {{1, 2}, {2, 1}}, 10));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DunnettDistribution.of(new double[][] {{1, 0.5}, {0.4, 1}}, 10));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DunnettDistribution.ofEqual(4, -0.9, 10))
        .withMessageContaining("contradict");
    assertThatIllegalArgumentException().isThrownBy(() -> DunnettDistribution.ofEqual(0, 0.5, 10));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DunnettDistribution.ofReplicates(0, new int[] {3}, 10));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DunnettDistribution.ofReplicates(3, new int[] {3, 0}, 10));
  }
}
