package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaPosteriorTest {

  @ParameterizedTest
  @CsvSource({"0.5,10.5", "10.5,0.5", "0.5,0.5", "60,20", "3,1000000"})
  void of_two_alike_each_is_ahead_half_the_time(double a, double b) {
    var belief = new BetaPosterior(a, b);
    assertThat(belief.chanceAheadOf(belief, 0)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void two_uniform_beliefs_leave_a_triangle() {
    // closed form: Pr(U − V > d) = (1 − d)²/2 for d ≥ 0
    var uniform = new BetaPosterior(1, 1);
    assertThat(uniform.chanceAheadOf(uniform, 0.3)).isCloseTo(0.245, within(1e-12));
    assertThat(uniform.chanceAheadOf(uniform, -0.3)).isCloseTo(0.755, within(1e-12));
    assertThat(uniform.chanceAheadOf(uniform, 1)).isCloseTo(0, within(1e-12));
    assertThat(uniform.chanceAheadOf(uniform, -1)).isCloseTo(1, within(1e-12));
  }

  @RepeatedTest(40)
  void ahead_and_behind_add_up(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    BetaPosterior one = drawn(random);
    BetaPosterior other = drawn(random);
    double margin = random.nextDouble(-0.5, 0.5);
    assertThat(one.chanceAheadOf(other, margin) + other.chanceAheadOf(one, -margin))
        .isCloseTo(1, within(1e-8));
  }

  @RepeatedTest(40)
  void chance_and_quantile_are_inverse(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    BetaPosterior belief = drawn(random);
    double probability = random.nextDouble(0.001, 0.999);
    assertThat(1 - belief.chanceAtLeast(belief.quantile(probability)))
        .isCloseTo(probability, within(1e-9));
  }

  @RepeatedTest(40)
  void the_mean_lies_between_the_prior_and_the_count(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    var prior = new BetaPrior(random.nextDouble(0.5, 9), random.nextDouble(0.5, 9));
    int n = random.nextInt(1, 200);
    int hits = random.nextInt(n + 1);
    double share = (double) hits / n;
    assertThat(BetaPosterior.of(hits, n, prior).mean())
        .isBetween(Math.min(share, prior.mean()), Math.max(share, prior.mean()));
  }

  @RepeatedTest(40)
  void one_more_rooted_never_lowers_the_chance(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    int n = random.nextInt(1, 200);
    int hits = random.nextInt(n);
    double line = random.nextDouble();
    assertThat(BetaPosterior.of(hits + 1, n).chanceAtLeast(line))
        .isGreaterThanOrEqualTo(BetaPosterior.of(hits, n).chanceAtLeast(line));
  }

  @Test
  void before_any_count_the_belief_is_the_prior() {
    assertThat(BetaPosterior.of(0, 0)).isEqualTo(new BetaPosterior(0.5, 0.5));
  }

  @Test
  void impossible_counts_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> BetaPosterior.of(25, 24));
    assertThatIllegalArgumentException().isThrownBy(() -> new BetaPosterior(0, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BetaPosterior.of(1, 2).chanceAtLeast(Double.NaN));
  }

  private static BetaPosterior drawn(SplittableRandom random) {
    int n = random.nextInt(1, 300);
    return BetaPosterior.of(random.nextInt(n + 1), n);
  }
}
