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
import trialwood.analysis.Interval;

class BinomialIntervalTest {

  @RepeatedTest(50)
  void the_exact_interval_holds_the_share_and_mirrors_with_it(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    int n = random.nextInt(1, 500);
    int hits = random.nextInt(n + 1);
    Interval exact = BinomialInterval.clopperPearson(hits, n, 0.95);
    Interval mirrored = BinomialInterval.clopperPearson(n - hits, n, 0.95);
    assertThat(exact.contains((double) hits / n)).isTrue();
    assertThat(exact.low()).isCloseTo(1 - mirrored.high(), within(1e-12));
    assertThat(exact.width()).isGreaterThan(BinomialInterval.jeffreys(hits, n, 0.95).width());
  }

  @ParameterizedTest
  @CsvSource({"0,0", "-1,24", "25,24"})
  void an_impossible_count_is_refused(int hits, int n) {
    assertThatIllegalArgumentException().isThrownBy(() -> BinomialInterval.wilson(hits, n, 0.95));
  }

  @Test
  void the_level_lies_inside_0_and_1() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BinomialInterval.wilson(20, 24, 95))
        .withMessageContaining("level");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BinomialInterval.clopperPearson(20, 24, Double.NaN));
  }
}
