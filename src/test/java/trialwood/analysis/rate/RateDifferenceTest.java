package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RateDifferenceTest {

  /**
   * With flat priors and no likeness inside a tray the posteriors are betas with whole parameters,
   * for which Pr(p &gt; q) is a finite sum (Cook, J. D. (2005) Exact calculation of beta
   * inequalities, technical report, from memory): Σᵢ B(a₂+i, b₁+b₂) / ((b₁+i) B(1+i, b₁) B(a₂,
   * b₂)), i = 0 … a₁−1.
   */
  @ParameterizedTest
  @CsvSource({"66,69", "54,69", "14,24", "72,72", "0,3", "36,36"})
  void agrees_with_the_exact_sum_for_two_betas(int candidateRooted, int checkRooted) {
    var flat = new TrayPrior(new BetaPrior(1, 1), new BetaPrior(1, 1e10));
    RateDifference difference =
        RateDifference.between(
            TrayPosterior.of(List.of(new TrayCount(candidateRooted, 72)), flat),
            TrayPosterior.of(List.of(new TrayCount(checkRooted, 72)), flat));
    double exact =
        exactChance(1 + candidateRooted, 73 - candidateRooted, 1 + checkRooted, 73 - checkRooted);
    assertThat(difference.chanceAtLeast(0)).isCloseTo(exact, within(1e-7));
  }

  @RepeatedTest(20)
  void agrees_with_a_sum_over_the_quantiles_of_the_check(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    TrayPosterior candidate = TrayPosterior.of(Trays.drawn(random));
    TrayPosterior check = TrayPosterior.of(Trays.drawn(random));
    RateDifference difference = RateDifference.between(candidate, check);
    int steps = 4000;
    for (double line : new double[] {-0.1, 0, 0.05}) {
      double sum = 0;
      for (int i = 0; i < steps; i++) {
        double x = (i + 0.5) / steps;
        double probability = x * x * (3 - 2 * x); // closer steps in the tails
        double weight = 6 * x * (1 - x) / steps;
        sum += weight * candidate.chanceAtLeast(check.quantile(probability) + line);
      }
      assertThat(difference.chanceAtLeast(line)).isCloseTo(sum, within(1e-6));
    }
  }

  @ParameterizedTest
  @CsvSource({"24,24,24", "0,0,0", "23,22,9", "5,3,6"})
  void a_batch_against_its_own_like_is_even_chances(int first, int second, int third) {
    TrayPosterior one = TrayPosterior.of(Trays.of24(first, second, third));
    RateDifference difference = RateDifference.between(one, one);
    assertThat(difference.chanceAtLeast(0)).isCloseTo(0.5, within(1e-6));
    assertThat(difference.mean()).isEqualTo(0);
    assertThat(difference.interval(0.95).low())
        .isCloseTo(-difference.interval(0.95).high(), within(1e-5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.3, -0.1, 0, 0.05, 0.2})
  void any_belief_of_the_candidate_may_stand_beside_the_check(double line) {
    TrayPosterior candidate = TrayPosterior.of(Trays.of24(20, 18, 17));
    TrayPosterior check = TrayPosterior.of(Trays.of24(22, 21, 15));
    assertThat(RateDifference.chanceAtLeast(candidate, check, line))
        .isCloseTo(RateDifference.between(candidate, check).chanceAtLeast(line), within(1e-5));
  }

  @Test
  void a_candidate_below_its_check_may_still_be_within_the_margin() {
    // invented demo counts of one sticking: candidate 22 21 23, check 23 24 22 of 24
    RateDifference difference =
        RateDifference.between(
            TrayPosterior.of(Trays.of24(22, 21, 23)), TrayPosterior.of(Trays.of24(23, 24, 22)));
    assertThat(difference.mean()).isNegative();
    assertThat(difference.chanceNotWorseBy(0.10))
        .isEqualTo(difference.chanceAtLeast(-0.10))
        .isGreaterThan(difference.chanceAtLeast(0));
  }

  @RepeatedTest(20)
  void chance_and_quantile_are_inverse_and_sides_mirror(RepetitionInfo repetition) {
    var random = new SplittableRandom(1000 + repetition.getCurrentRepetition());
    TrayPosterior candidate = TrayPosterior.of(Trays.drawn(random));
    TrayPosterior check = TrayPosterior.of(Trays.drawn(random));
    RateDifference difference = RateDifference.between(candidate, check);
    double probability = random.nextDouble(0.01, 0.99);
    double value = difference.quantile(probability);
    assertThat(1 - difference.chanceAtLeast(value)).isCloseTo(probability, within(1e-7));
    assertThat(RateDifference.between(check, candidate).chanceAtLeast(-value))
        .isCloseTo(probability, within(1e-5));
  }

  @Test
  void a_difference_beyond_everything_is_certain() {
    TrayPosterior one = TrayPosterior.of(Trays.of24(12));
    RateDifference difference = RateDifference.between(one, one);
    assertThat(difference.chanceAtLeast(-1)).isCloseTo(1, within(1e-9));
    assertThat(difference.chanceAtLeast(1)).isCloseTo(0, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> difference.chanceAtLeast(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> difference.quantile(1));
  }

  private static double exactChance(int a1, int b1, int a2, int b2) {
    double sum = 0;
    for (int i = 0; i < a1; i++) {
      sum += Math.exp(logBeta(a2 + i, b1 + b2) - logBeta(1 + i, b1) - logBeta(a2, b2)) / (b1 + i);
    }
    return sum;
  }

  private static double logBeta(int a, int b) {
    return logFactorial(a - 1) + logFactorial(b - 1) - logFactorial(a + b - 1);
  }

  private static double logFactorial(int n) {
    double log = 0;
    for (int i = 2; i <= n; i++) {
      log += Math.log(i);
    }
    return log;
  }
}
