package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trialwood.analysis.Maximum.Surface;

class MaximumTest {

  @Test
  void the_top_of_rosenbrocks_ridge_is_found() {
    // Rosenbrock (1960) Computer Journal 3, 175–184: −100(y − x²)² − (1 − x)², highest at (1, 1)
    Maximum top = Maximum.of(MaximumTest::rosenbrock, -1.2, 1).value().orElseThrow();
    assertThat(top.at().get(0)).isCloseTo(1, within(1e-12));
    assertThat(top.at().get(1)).isCloseTo(1, within(1e-12));
    assertThat(top.covariance().between(0, 0))
        .isCloseTo(0.5, within(1e-9)); // inverse of [[802,-400],..]
  }

  @Test
  void a_slope_without_a_top_is_not_settled() {
    assertThat(Maximum.of(x -> surface(x[0], 1, 0), 0).lack()).contains("The fit did not settle.");
  }

  @Test
  void a_function_that_is_not_a_number_is_not_settled() {
    assertThat(Maximum.of(x -> surface(Double.NaN, 1, -1), 0).lack()).isPresent();
  }

  private static Surface surface(double value, double slope, double bend) {
    return new Surface(value, new double[] {slope}, new double[][] {{bend}});
  }

  private static Surface rosenbrock(double[] at) {
    double x = at[0];
    double y = at[1];
    return new Surface(
        -100 * Math.pow(y - x * x, 2) - Math.pow(1 - x, 2),
        new double[] {400 * x * (y - x * x) + 2 * (1 - x), -200 * (y - x * x)},
        new double[][] {{400 * y - 1200 * x * x - 2, 400 * x}, {400 * x, -200}});
  }
}
