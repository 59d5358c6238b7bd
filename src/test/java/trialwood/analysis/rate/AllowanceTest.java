package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of UPOV TGP/8 and TGP/10 are met in {@code StandardsTest}. */
class AllowanceTest {

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.01, 0.05, 0.3, 0.9})
  void more_plants_never_allow_fewer(double rate) {
    for (int n = 2; n <= 400; n++) {
      assertThat(Allowance.of(n, rate).allowed())
          .isGreaterThanOrEqualTo(Allowance.of(n - 1, rate).allowed())
          .isLessThanOrEqualTo(n);
    }
  }

  @Test
  void twenty_plants_of_a_clone_may_hold_one_off_type() {
    // standard wording for vegetatively propagated species: UPOV TG/1/3 General Introduction
    Allowance allowance = Allowance.of(20, 0.01);
    assertThat(allowance.allowed()).isEqualTo(1);
    assertThat(allowance.allows(1)).isTrue();
    assertThat(allowance.allows(2)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"0,0.01,0.95", "20,0,0.95", "20,1,0.95", "20,NaN,0.95", "20,0.01,1"})
  void an_impossible_question_is_refused(int plants, double rate, double acceptance) {
    assertThatIllegalArgumentException().isThrownBy(() -> Allowance.of(plants, rate, acceptance));
  }

  @Test
  void more_off_types_than_plants_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Allowance.of(20, 0.01).allows(21));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Allowance.of(20, 0.01).riskOfPassing(1.1));
  }
}
