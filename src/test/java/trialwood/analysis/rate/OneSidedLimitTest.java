package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneSidedLimitTest {

  @ParameterizedTest
  @CsvSource({"21,24", "1,24", "66,72", "0,8", "8,8"})
  void the_limits_at_a_level_are_the_ends_of_the_interval_with_twice_the_doubt(int hits, int n) {
    var interval = BinomialInterval.wilson(hits, n, 0.9);
    assertThat(OneSidedLimit.wilson(hits, n, 0.95).low()).isCloseTo(interval.low(), within(1e-12));
    assertThat(OneSidedLimit.wilson(hits, n, 0.95).high())
        .isCloseTo(interval.high(), within(1e-12));
    var exact = BinomialInterval.clopperPearson(hits, n, 0.9);
    assertThat(OneSidedLimit.clopperPearson(hits, n, 0.95).low())
        .isCloseTo(exact.low(), within(1e-12));
    assertThat(OneSidedLimit.clopperPearson(hits, n, 0.95).high())
        .isCloseTo(exact.high(), within(1e-12));
  }

  @Test
  void all_of_n_guarantee_the_nth_root_of_the_doubt() {
    // closed form: the lower limit p solves pⁿ = 1 − level
    assertThat(OneSidedLimit.clopperPearson(30, 30, 0.95).low())
        .isCloseTo(Math.pow(0.05, 1.0 / 30), within(1e-12));
  }

  @Test
  void a_level_of_one_half_meets_wilson_at_the_count() {
    assertThat(OneSidedLimit.wilson(6, 24, 0.5).low()).isCloseTo(0.25, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"0,0,0.95", "5,4,0.95", "-1,4,0.95", "1,4,0", "1,4,1", "1,4,NaN"})
  void an_impossible_question_is_refused(int hits, int n, double level) {
    assertThatIllegalArgumentException().isThrownBy(() -> OneSidedLimit.wilson(hits, n, level));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OneSidedLimit.clopperPearson(hits, n, level));
  }
}
