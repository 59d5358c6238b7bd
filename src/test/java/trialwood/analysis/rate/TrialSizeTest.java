package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrialSizeTest {

  @Test
  void independent_cuttings_need_the_textbook_number() {
    // n = z²p(1 − p)/h² = 1.96² · 0.25 / 0.05² = 384.1…: Cochran (1977) Sampling Techniques, ch. 4
    TrialSize size = TrialSize.forHalfWidth(0.05, 1, 0.5, 0, 0.95).value().orElseThrow();
    assertThat(size.trays()).isEqualTo(385);
    assertThat(size.cuttings()).isEqualTo(385);
  }

  @ParameterizedTest
  @CsvSource({"0.1,24,0.8,0.05", "0.05,72,0.7,0.1", "0.15,24,0.5,0", "0.9,24,0.5,0.05"})
  void the_trial_reaches_the_width_and_one_tray_fewer_does_not(
      double wanted, int cuttings, double share, double likeness) {
    TrialSize size =
        TrialSize.forHalfWidth(wanted, cuttings, share, likeness, 0.95).value().orElseThrow();
    assertThat(size.halfWidth()).isLessThanOrEqualTo(wanted);
    if (size.trays() > 1) {
      TrialSize fewer = TrialSize.of(size.trays() - 1, cuttings, share, likeness, 0.95);
      assertThat(fewer.halfWidth()).isGreaterThan(wanted);
    }
  }

  @Test
  void cuttings_that_are_all_alike_count_as_one_a_tray() {
    double one = TrialSize.of(6, 1, 0.8, 0, 0.95).halfWidth();
    assertThat(TrialSize.of(6, 200, 0.8, 0.999999, 0.95).halfWidth()).isCloseTo(one, within(1e-6));
  }

  @Test
  void a_precision_out_of_reach_is_said_so() {
    assertThat(TrialSize.forHalfWidth(1e-6, 24, 0.5, 0.05, 0.95).lack())
        .contains("No trial of a bearable size is so precise.");
  }

  @ParameterizedTest
  @CsvSource({
    "0,24,0.8,0.05,0.95", "1,24,0.8,0.05,0.95", "0.1,0,0.8,0.05,0.95", "0.1,24,0,0.05,0.95",
    "0.1,24,1,0.05,0.95", "0.1,24,0.8,1,0.95", "0.1,24,0.8,-0.1,0.95", "0.1,24,0.8,NaN,0.95",
    "0.1,24,0.8,0.05,1"
  })
  void an_impossible_question_is_refused(
      double wanted, int cuttings, double share, double likeness, double level) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TrialSize.forHalfWidth(wanted, cuttings, share, likeness, level));
  }
}
