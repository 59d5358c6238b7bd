package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.rate.TrayHistory.Standing;

class TrayHistoryTest {

  @Test
  void fewer_than_thirty_trays_leave_the_usual_prior() {
    List<List<TrayCount>> batches = Collections.nCopies(9, Trays.of24(22, 21, 9));
    TrayHistory history = TrayHistory.of(batches);
    assertThat(history.trays()).isEqualTo(27);
    assertThat(history.standing()).isEqualTo(Standing.USUAL);
    assertThat(history.prior()).isEqualTo(TrayPrior.USUAL);
  }

  @Test
  void batches_of_one_tray_say_nothing_about_trays() {
    TrayHistory history = TrayHistory.of(Collections.nCopies(60, Trays.of24(20)));
    assertThat(history.trays()).isZero();
    assertThat(history.prior()).isEqualTo(TrayPrior.USUAL);
  }

  @Test
  void no_history_leaves_the_usual_prior() {
    assertThat(TrayHistory.of(List.of()).standing()).isEqualTo(Standing.USUAL);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.08, 0.15})
  void the_likeness_that_made_the_trays_is_found_again(double rho) {
    TrayHistory history = TrayHistory.of(drawn(new SplittableRandom(7), 120, 4, rho));
    assertThat(history.standing()).isEqualTo(Standing.LEARNT);
    assertThat(history.meanLikeness()).isCloseTo(rho, within(0.35 * rho));
    assertThat(history.prior().share()).isEqualTo(TrayPrior.USUAL.share());
  }

  @Test
  void trays_as_even_as_can_be_stop_at_the_lower_bound() {
    TrayHistory history = TrayHistory.of(Collections.nCopies(80, Trays.of24(18, 18, 18, 18)));
    assertThat(history.standing()).isEqualTo(Standing.AT_A_BOUND);
    assertThat(history.meanLikeness()).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void trays_of_all_or_nothing_stop_at_the_upper_bound() {
    TrayHistory history = TrayHistory.of(Collections.nCopies(80, Trays.of24(24, 0, 24, 0)));
    assertThat(history.standing()).isEqualTo(Standing.AT_A_BOUND);
    assertThat(history.meanLikeness()).isCloseTo(0.25, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void the_order_of_batches_and_trays_changes_nothing(int seed) {
    List<List<TrayCount>> batches = drawn(new SplittableRandom(seed), 12, 3, 0.1);
    var shuffled = new ArrayList<List<TrayCount>>();
    for (List<TrayCount> batch : batches) {
      var trays = new ArrayList<>(batch);
      Collections.reverse(trays);
      shuffled.add(0, trays);
    }
    assertThat(TrayHistory.of(shuffled)).isEqualTo(TrayHistory.of(batches));
  }

  @Test
  void the_mean_it_finds_makes_the_counts_most_probable() {
    List<List<TrayCount>> batches = drawn(new SplittableRandom(3), 12, 3, 0.08);
    double found = TrayHistory.of(batches).meanLikeness();
    // the same evidence by the batches' full posteriors, an independent quadrature
    assertThat(evidence(batches, found))
        .isGreaterThanOrEqualTo(evidence(batches, found - 0.002))
        .isGreaterThanOrEqualTo(evidence(batches, found + 0.002));
  }

  private static double evidence(List<List<TrayCount>> batches, double mean) {
    var prior = new TrayPrior(TrayPrior.USUAL.share(), new BetaPrior(1, 1 / mean - 1));
    return batches.stream()
        .mapToDouble(trays -> TrayPosterior.of(trays, prior).logEvidence())
        .sum();
  }

  /** Beta-binomial trays of 48 with one ρ, each batch with its own share. */
  private static List<List<TrayCount>> drawn(
      RandomGenerator random, int batches, int trays, double rho) {
    var drawn = new ArrayList<List<TrayCount>>();
    for (int batch = 0; batch < batches; batch++) {
      double mean = random.nextDouble(0.4, 0.9);
      var beta = BetaDistribution.of(mean * (1 - rho) / rho, (1 - mean) * (1 - rho) / rho);
      drawn.add(
          IntStream.range(0, trays)
              .mapToObj(
                  tray -> {
                    double p = beta.inverseCumulativeProbability(random.nextDouble());
                    long rooted =
                        IntStream.range(0, 48).filter(i -> random.nextDouble() < p).count();
                    return new TrayCount((int) rooted, 48);
                  })
              .toList());
    }
    return drawn;
  }
}
