package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentBeliefTest {

  @Test
  void the_quantiles_are_students() {
    // Student's t at 97.5 %, printed tables, from memory: 2.776 on 4, 2.228 on 10, 2.042 on 30 df
    assertThat(new StudentBelief(0, 1, 4).quantile(0.975)).isCloseTo(2.776, within(5e-4));
    assertThat(new StudentBelief(0, 1, 10).quantile(0.975)).isCloseTo(2.228, within(5e-4));
    assertThat(new StudentBelief(5, 2, 30).quantile(0.975)).isCloseTo(9.085, within(5e-4));
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
