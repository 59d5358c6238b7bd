package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class TrayDispersionTest {

  @Test
  void one_tray_under_a_clogged_nozzle_stands_out() {
    // invented demo counts
    TrayDispersion spread = TrayDispersion.of(Trays.of24(23, 22, 9)).value().orElseThrow();
    assertThat(spread.chiSquare()).isCloseTo(27.1, within(0.05));
    assertThat(spread.degreesOfFreedom()).isEqualTo(2);
    assertThat(spread.phi()).isCloseTo(13.6, within(0.05));
    assertThat(spread.pooledShare()).isEqualTo(0.75);
    // with 2 df the chi-square tail is exp(-X²/2), closed form
    assertThat(spread.pValue()).isCloseTo(Math.exp(-spread.chiSquare() / 2), within(1e-15));
  }

  @RepeatedTest(20)
  void the_trays_are_a_two_column_table_to_a_chi_square_test(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    List<TrayCount> trays =
        List.of(
            new TrayCount(random.nextInt(1, 20), 24),
            new TrayCount(random.nextInt(1, 40), 48),
            new TrayCount(random.nextInt(1, 12), 12));
    long[][] table =
        trays.stream()
            .map(tray -> new long[] {tray.rooted(), tray.stuck() - tray.rooted()})
            .toArray(long[][]::new);
    var test = ChiSquareTest.withDefaults().test(table);
    TrayDispersion spread = TrayDispersion.of(trays).value().orElseThrow();
    assertThat(spread.chiSquare()).isCloseTo(test.getStatistic(), within(1e-10));
    assertThat(spread.pValue()).isCloseTo(test.getPValue(), within(1e-12));
  }

  @Test
  void a_single_tray_has_no_spread_and_says_so() {
    assertThat(TrayDispersion.of(Trays.of24(21)).lack())
        .hasValue("The spread between trays needs at least two trays.");
  }

  @Test
  void trays_that_all_rooted_have_no_spread_and_say_so() {
    assertThat(TrayDispersion.of(Trays.of24(24, 24)).lack()).isPresent();
    assertThat(TrayDispersion.of(Trays.of24(0, 0, 0)).value()).isEmpty();
  }
}
