package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.DoubleAdder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Belief;

class FurtherTraysTest {

  private static final List<TrayCount> SO_FAR = Trays.of24(20, 18, 17);

  @Test
  void a_belief_after_further_trays_is_the_posterior_of_all_of_them() {
    var grid = new TrayGrid(SO_FAR, TrayPrior.USUAL, 24);
    int[] future = {19, 24, 12, 20, 21, 18, 22, 17, 20, 20};
    for (int further : new int[] {1, 3, 10}) {
      var all = new ArrayList<>(SO_FAR);
      for (int i = 0; i < further; i++) {
        all.add(new TrayCount(future[i], 24));
      }
      TrayPosterior posterior = TrayPosterior.of(all);
      Belief belief = grid.after(future, further);
      assertThat(belief.mean()).isCloseTo(posterior.mean(), within(1e-6));
      assertThat(belief.chanceAtLeast(0.7)).isCloseTo(posterior.chanceAtLeast(0.7), within(1e-5));
      assertThat(belief.quantile(0.1)).isCloseTo(posterior.quantile(0.1), within(1e-5));
    }
  }

  @Test
  void on_average_the_future_believes_what_is_believed_now() {
    TrayPosterior now = TrayPosterior.of(SO_FAR);
    var mean = new DoubleAdder();
    var chance = new DoubleAdder();
    FurtherTrays.after(
            now,
            24,
            (trays, share) -> {
              mean.add(share.mean());
              chance.add(share.chanceAtLeast(0.7));
              return true;
            })
        .chanceWith(3);
    // both are martingales; 2,000 draws leave about 0.001 and 0.006
    assertThat(mean.sum() / FurtherTrays.DRAWS).isCloseTo(now.mean(), within(0.005));
    assertThat(chance.sum() / FurtherTrays.DRAWS).isCloseTo(now.chanceAtLeast(0.7), within(0.025));
  }

  @Test
  void the_same_records_give_the_same_answer() {
    assertThat(plan(0.7).chanceWith(2)).isEqualTo(plan(0.7).chanceWith(2));
  }

  @Test
  void more_trays_settle_more() {
    FurtherTrays plan = plan(0.7);
    assertThat(plan.chanceWith(12).settled()).isGreaterThan(plan.chanceWith(1).settled());
    FurtherTrays.Chance fewest = plan.fewest(0.5).value().orElseThrow();
    assertThat(fewest.settled()).isGreaterThanOrEqualTo(0.5);
    if (fewest.trays() > 1) {
      assertThat(plan.chanceWith(fewest.trays() - 1).settled()).isLessThan(0.5);
    }
  }

  @Test
  void a_question_that_nothing_settles_is_said_so() {
    FurtherTrays never = FurtherTrays.after(TrayPosterior.of(SO_FAR), 24, (trays, share) -> false);
    assertThat(never.fewest(0.8).lack())
        .contains("Even 20 further trays would not settle it often enough.");
    assertThat(never.chanceWith(1).simulationError()).isPositive();
  }

  @Test
  void the_further_trays_come_last() {
    FurtherTrays plan =
        FurtherTrays.after(
            TrayPosterior.of(SO_FAR),
            12,
            (trays, share) ->
                trays.subList(0, 3).equals(SO_FAR)
                    && trays.size() == 5
                    && trays.get(4).stuck() == 12);
    assertThat(plan.chanceWith(2).settled()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 501})
  void a_tray_of_no_size_is_refused(int cuttings) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> FurtherTrays.after(TrayPosterior.of(SO_FAR), cuttings, (trays, share) -> true));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 21})
  void a_number_of_trays_out_of_reach_is_refused(int further) {
    assertThatIllegalArgumentException().isThrownBy(() -> plan(0.7).chanceWith(further));
  }

  /** Settled if surely above, or surely below, the line. */
  private static FurtherTrays plan(double line) {
    return FurtherTrays.after(
        TrayPosterior.of(SO_FAR),
        24,
        (trays, share) -> {
          double chance = share.chanceAtLeast(line);
          return chance >= 0.9 || chance <= 0.05;
        });
  }
}
