package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;
import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.FisherExactTest;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FourfoldTableTest {

  @Test
  void the_lady_tasting_tea_has_one_chance_in_seventy() {
    // Fisher, R. A. (1935) The Design of Experiments, chapter II: 8 cups, all named aright
    FisherTest test = new FourfoldTable(4, 4, 0, 4).fisher();
    assertThat(test.greater()).isCloseTo(1.0 / 70, within(1e-15));
    assertThat(test.twoSided()).isCloseTo(2.0 / 70, within(1e-15));
    assertThat(test.less()).isEqualTo(1);
  }

  @RepeatedTest(60)
  void fishers_test_agrees_with_a_general_statistics_library(RepetitionInfo repetition) {
    FourfoldTable table = drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    int[][] counts = {
      {table.hits(), table.n() - table.hits()},
      {table.otherHits(), table.otherN() - table.otherHits()}
    };
    FisherTest test = table.fisher();
    var library = FisherExactTest.withDefaults();
    assertThat(test.twoSided()).isCloseTo(library.test(counts).getPValue(), within(1e-10));
    assertThat(test.greater())
        .isCloseTo(
            library.with(AlternativeHypothesis.GREATER_THAN).test(counts).getPValue(),
            within(1e-10));
    assertThat(test.less())
        .isCloseTo(
            library.with(AlternativeHypothesis.LESS_THAN).test(counts).getPValue(), within(1e-10));
  }

  @RepeatedTest(30)
  void the_exact_limits_leave_their_tails(RepetitionInfo repetition) {
    FourfoldTable table = drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    OddsRatio.Limits limits = table.oddsRatio().exact(0.9).value().orElse(null);
    if (limits != null && limits.low() > 0) {
      assertThat(table.law(Math.log(limits.low())).chanceOfAtLeast(table.hits()))
          .isCloseTo(0.05, within(1e-11));
    }
    if (limits != null && Double.isFinite(limits.high())) {
      assertThat(table.law(Math.log(limits.high())).chanceOfAtMost(table.hits()))
          .isCloseTo(0.05, within(1e-11));
    }
  }

  @RepeatedTest(30)
  void swapping_the_rows_turns_everything_round(RepetitionInfo repetition) {
    FourfoldTable table = drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    var swapped = new FourfoldTable(table.otherHits(), table.otherN(), table.hits(), table.n());
    assertThat(swapped.newcombe(0.95).low()).isCloseTo(-table.newcombe(0.95).high(), within(1e-12));
    assertThat(swapped.fisher().greater()).isCloseTo(table.fisher().less(), within(1e-12));
    assertThat(swapped.fisher().twoSided()).isCloseTo(table.fisher().twoSided(), within(1e-12));
  }

  @Test
  void a_nursery_of_millions_is_no_harder() {
    var table = new FourfoldTable(600_000, 1_000_000, 598_000, 1_000_000);
    FisherTest test = table.fisher();
    var law = HypergeometricDistribution.of(2_000_000, 1_198_000, 1_000_000);
    assertThat(test.greater()).isCloseTo(law.survivalProbability(599_999), within(1e-9));
    double odds = table.oddsRatio().conditional().value().orElseThrow();
    assertThat(odds).isCloseTo(table.oddsRatio().sample().value().orElseThrow(), within(1e-6));
  }

  @Test
  void nor_are_thousands_of_millions() {
    var table = new FourfoldTable(600_000_000, 1_000_000_000, 600_000_000, 1_000_000_000);
    OddsRatio.Limits limits = table.oddsRatio().exact(0.95).value().orElseThrow();
    // normal approximation of log ψ, good to many digits here: ±1.96 √(Σ 1/count)
    double half = 1.959964 * Math.sqrt(2 / 600e6 + 2 / 400e6);
    assertThat(Math.log(limits.high())).isCloseTo(half, within(1e-3 * half));
    assertThat(Math.log(limits.low())).isCloseTo(-half, within(1e-3 * half));
  }

  @ParameterizedTest
  @CsvSource({"0,10,0,20", "10,10,20,20"})
  void all_or_nothing_in_both_cannot_be_compared(int hits, int n, int otherHits, int otherN) {
    var table = new FourfoldTable(hits, n, otherHits, otherN);
    assertThat(table.pearson().lack()).isPresent();
    assertThat(table.oddsRatio().sample().lack()).isPresent();
    assertThat(table.oddsRatio().conditional().lack()).isPresent();
    assertThat(table.oddsRatio().exact(0.95).lack()).isPresent();
    assertThat(table.fisher().twoSided()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "1,0,1,2",
    "1,2,1,0",
    "3,2,1,2",
    "-1,2,1,2",
    "1,2,3,2",
    "1,2,-1,2",
    "1,2147483647,1,2147483647"
  })
  void impossible_counts_are_refused(int hits, int n, int otherHits, int otherN) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FourfoldTable(hits, n, otherHits, otherN));
  }

  @Test
  void a_level_outside_0_to_1_is_refused() {
    var table = new FourfoldTable(3, 4, 1, 4);
    assertThatIllegalArgumentException().isThrownBy(() -> table.newcombe(1));
    assertThatIllegalArgumentException().isThrownBy(() -> table.oddsRatio().exact(0));
  }

  private static FourfoldTable drawn(SplittableRandom random) {
    int n = random.nextInt(1, 80);
    int otherN = random.nextInt(1, 80);
    return new FourfoldTable(random.nextInt(n + 1), n, random.nextInt(otherN + 1), otherN);
  }
}
