package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class StudentBeliefTest {

  /** Rows with finite degrees of freedom; infinitely many are refused. */
  static Stream<Reference.Row> quantiles() {
    return Reference.rows("12-quantiles.csv", "qt").filter(row -> !row.text("df").equals("Inf"));
  }

  @ParameterizedTest
  @MethodSource("quantiles")
  void quantiles_agree_with_R(Reference.Row row) {
    row.matches(new StudentBelief(0, 1, row.number("df")).quantile(row.number("p")));
  }

  @Test
  void a_standard_error_of_0_leaves_a_point() {
    var point = new StudentBelief(1.5, 0, 4);
    assertThat(point.interval(0.95)).isEqualTo(new Interval(1.5, 1.5, 0.95));
    assertThat(point.chanceAtLeast(1.5)).isEqualTo(1);
    assertThat(point.chanceAtLeast(1.6)).isEqualTo(0);
  }

  @RepeatedTest(30)
  void chance_and_quantile_are_inverse(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    var belief =
        new StudentBelief(
            random.nextDouble(-10, 10), random.nextDouble(0.01, 5), random.nextInt(1, 40));
    double probability = random.nextDouble(0.001, 0.999);
    assertThat(1 - belief.chanceAtLeast(belief.quantile(probability)))
        .isCloseTo(probability, within(1e-12));
    assertThat(belief.negated().chanceAtLeast(0))
        .isCloseTo(1 - belief.chanceAtLeast(0), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"NaN,1,4", "0,NaN,4", "0,-1,4", "0,1,0", "0,1,Infinity", "Infinity,1,4"})
  void an_impossible_belief_is_refused(double estimate, double se, double df) {
    assertThatIllegalArgumentException().isThrownBy(() -> new StudentBelief(estimate, se, df));
  }

  @Test
  void an_interval_runs_upwards_and_holds_numbers() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(2, 1, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(Double.NaN, 1, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(0, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new StudentBelief(0, 1, 3).interval(95));
  }
}
