package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.Interval;

class TrayPosteriorTest {

  @Test
  void without_likeness_inside_a_tray_the_posterior_is_the_beta_of_the_pooled_count() {
    var prior = new TrayPrior(new BetaPrior(1, 1), new BetaPrior(1, 1e9));
    TrayPosterior posterior = TrayPosterior.of(Trays.of24(22, 21, 23), prior);
    var beta = BetaDistribution.of(67, 7); // closed form: Beta(1 + 66, 1 + 6)
    assertThat(posterior.mean()).isCloseTo(beta.getMean(), within(1e-7));
    assertThat(posterior.sd()).isCloseTo(Math.sqrt(beta.getVariance()), within(1e-7));
    assertThat(posterior.chanceAtLeast(0.85))
        .isCloseTo(beta.survivalProbability(0.85), within(1e-7));
  }

  @Test
  void a_large_nursery_record_narrows_to_its_share() {
    List<TrayCount> trays = Collections.nCopies(400, new TrayCount(54, 72));
    TrayPosterior posterior = TrayPosterior.of(trays);
    assertThat(posterior.mean()).isCloseTo(0.75, within(1e-3));
    assertThat(posterior.sd()).isBetween(0.002, 0.003);
    assertThat(posterior.chanceAtLeast(0.70)).isCloseTo(1, within(1e-9));
  }

  @Test
  void even_trays_settle_what_uneven_trays_leave_open() {
    TrayPosterior even = TrayPosterior.of(Trays.of24(22, 21, 23));
    TrayPosterior uneven = TrayPosterior.of(Trays.of24(23, 22, 9));
    assertThat(even.chanceAtLeast(0.80)).isCloseTo(0.96, within(0.005));
    assertThat(uneven.chanceAtLeast(0.80)).isCloseTo(0.40, within(0.005));
    assertThat(uneven.mean()).isCloseTo(0.77, within(0.005));
    assertThat(uneven.rawShare()).isEqualTo(0.75);
  }

  @Test
  void a_line_outside_0_to_1_is_certain_either_way() {
    TrayPosterior posterior = TrayPosterior.of(Trays.of24(21));
    assertThat(posterior.chanceAtLeast(0)).isEqualTo(1);
    assertThat(posterior.chanceAtLeast(-0.5)).isEqualTo(1);
    assertThat(posterior.chanceAtLeast(1)).isEqualTo(0);
    assertThat(posterior.chanceAtLeast(1.5)).isEqualTo(0);
  }

  @RepeatedTest(40)
  void the_order_of_the_trays_changes_nothing(RepetitionInfo repetition) {
    List<TrayCount> trays = Trays.drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    var shuffled = new ArrayList<>(trays);
    Collections.shuffle(shuffled, new Random(repetition.getCurrentRepetition()));
    assertThat(TrayPosterior.of(shuffled).mean()).isEqualTo(TrayPosterior.of(trays).mean());
    assertThat(TrayPosterior.of(shuffled).logEvidence())
        .isCloseTo(TrayPosterior.of(trays).logEvidence(), within(1e-12));
  }

  @RepeatedTest(40)
  void one_more_rooted_in_every_tray_never_lowers_the_chance(RepetitionInfo repetition) {
    List<TrayCount> trays = Trays.drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    List<TrayCount> better =
        trays.stream().map(tray -> new TrayCount(tray.rooted() + 1, tray.stuck())).toList();
    for (double line : new double[] {0.2, 0.5, 0.7, 0.8, 0.95}) {
      assertThat(TrayPosterior.of(better).chanceAtLeast(line))
          .isGreaterThanOrEqualTo(TrayPosterior.of(trays).chanceAtLeast(line) - 1e-9);
    }
  }

  @RepeatedTest(40)
  void the_mean_of_equal_trays_lies_between_the_prior_and_the_count(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    int stuck = random.nextInt(2, 100);
    int rooted = random.nextInt(stuck + 1);
    TrayPosterior posterior =
        TrayPosterior.of(Collections.nCopies(random.nextInt(1, 6), new TrayCount(rooted, stuck)));
    double share = (double) rooted / stuck;
    assertThat(posterior.mean())
        .isBetween(Math.min(share, 0.5) - 1e-9, Math.max(share, 0.5) + 1e-9);
  }

  @RepeatedTest(40)
  void chance_and_quantile_are_inverse(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    TrayPosterior posterior = TrayPosterior.of(Trays.drawn(random));
    double probability = random.nextDouble(0.001, 0.999);
    assertThat(1 - posterior.chanceAtLeast(posterior.quantile(probability)))
        .isCloseTo(probability, within(1e-9));
    Interval interval = posterior.interval(0.9);
    assertThat(posterior.chanceAtLeast(interval.low()) - posterior.chanceAtLeast(interval.high()))
        .isCloseTo(0.9, within(1e-9));
  }

  @Test
  void a_batch_without_trays_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TrayPosterior.of(List.of()))
        .withMessage("No tray has been counted.");
  }

  @ParameterizedTest
  @CsvSource({"25,24", "-1,24", "0,0", "1,-1", "1,100001", "1,2147483647"})
  void a_tray_whose_counts_are_impossible_is_refused(int rooted, int stuck) {
    assertThatIllegalArgumentException().isThrownBy(() -> new TrayCount(rooted, stuck));
  }

  @Test
  void a_prior_needs_positive_weights() {
    assertThatIllegalArgumentException().isThrownBy(() -> new BetaPrior(0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new BetaPrior(1, Double.NaN));
  }
}
