package trialwood.analysis.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;

class BuildUpTest {

  @Test
  void one_cycle_without_stock_is_binomial() {
    StockDistribution plants =
        distribution(new StockBuildUp(3, List.of(new Cycle(20, 0.8, 0.9, 0))));
    var binomial = BinomialDistribution.of(60, 0.72);
    assertThat(plants.most()).isEqualTo(60);
    for (int n = 0; n <= 60; n++) {
      assertThat(plants.chanceOf(n)).isCloseTo(binomial.probability(n), within(1e-14));
    }
    assertThat(plants.chanceOf(61)).isZero();
    assertThat(plants.quantile(0.05)).isEqualTo(binomial.inverseCumulativeProbability(0.05));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void the_distribution_agrees_with_its_mean_variance_and_chance_of_none(int seed) {
    Random random = new Random(seed);
    StockBuildUp stock =
        new StockBuildUp(1 + random.nextInt(4), List.of(any(random), any(random), any(random)));
    StockDistribution plants = distribution(stock);
    double total = 0;
    double mean = 0;
    double squares = 0;
    for (int n = 0; n <= plants.most(); n++) {
      total += plants.chanceOf(n);
      mean += n * plants.chanceOf(n);
      squares += (double) n * n * plants.chanceOf(n);
    }
    assertThat(total).isCloseTo(1, within(1e-12));
    assertThat(mean).isCloseTo(stock.expected().mean(), within(1e-9 * mean));
    assertThat(squares - mean * mean)
        .isCloseTo(stock.expected().variance(), within(1e-8 * squares));
    assertThat(plants.chanceOf(0)).isCloseTo(stock.chanceOfNone(), within(1e-13));
    assertThat(plants.chanceAtLeast(0)).isCloseTo(1, within(1e-12));
    assertThat(plants.chanceAtLeast(plants.most() + 1)).isZero();
  }

  @Test
  void many_plants_are_nearly_normal() {
    StockBuildUp stock =
        new StockBuildUp(40, List.of(new Cycle(8, 0.6, 0.9, 0.9), new Cycle(8, 0.6, 0.9, 0.9)));
    for (int target : new int[] {900, 1000, 1100}) {
      assertThat(stock.expected().roughChanceAtLeast(target))
          .isCloseTo(distribution(stock).chanceAtLeast(target), within(0.01));
    }
  }

  @Test
  void rates_without_doubt_leave_one_number() {
    StockDistribution all =
        distribution(new StockBuildUp(2, List.of(new Cycle(5, 1, 1, 1), new Cycle(5, 1, 1, 1))));
    assertThat(all.chanceOf(72)).isCloseTo(1, within(1e-12));
    StockBuildUp dead = new StockBuildUp(2, List.of(new Cycle(5, 0, 1, 0)));
    assertThat(dead.chanceOfNone()).isEqualTo(1);
    assertThat(distribution(dead).quantile(0.5)).isZero();
    assertThat(dead.expected().roughChanceAtLeast(1)).isZero();
    assertThat(new StockBuildUp(2, List.of(new Cycle(0, 1, 1, 1))).expected())
        .isEqualTo(new StockBuildUp.Expectation(2, 0));
  }

  @Test
  void many_cycles_are_listed_as_far_as_it_matters() {
    Cycle cycle = new Cycle(10, 0.7, 0.9, 0.9);
    StockBuildUp stock = new StockBuildUp(10, List.of(cycle, cycle, cycle, cycle, cycle));
    StockDistribution plants = distribution(stock);
    double mean = 0;
    for (int n = 0; n <= plants.most(); n++) {
      mean += n * plants.chanceOf(n);
    }
    assertThat(mean).isCloseTo(stock.expected().mean(), within(1e-3));
    assertThat(plants.chanceAtLeast(0)).isCloseTo(1, within(1e-9));
  }

  @Test
  void too_many_plants_to_list_are_an_answer() {
    Cycle cycle = new Cycle(100, 0.5, 0.9, 0);
    StockBuildUp stock = new StockBuildUp(5, List.of(cycle, cycle, cycle, cycle));
    assertThat(stock.distribution()).isInstanceOf(Answer.Lacking.class);
    assertThat(stock.expected().roughChanceAtLeast(1_000_000)).isGreaterThan(0.99);
  }

  @Test
  void with_certain_rates_the_forecast_agrees_with_the_exact_answer() {
    UncertainCycle cycle =
        new UncertainCycle(6, new KnownRate(0.55), new KnownRate(0.85), new KnownRate(0.95));
    BuildUpForecast forecast =
        BuildUpForecast.of(2, List.of(cycle, cycle, cycle), 100).value().orElseThrow();
    Cycle known = new Cycle(6, 0.55, 0.85, 0.95);
    double exact =
        distribution(new StockBuildUp(2, List.of(known, known, known))).chanceAtLeast(100);
    assertThat(forecast.chance()).isCloseTo(exact, within(4 * forecast.simulationError()));
    assertThat(forecast)
        .isEqualTo(BuildUpForecast.of(2, List.of(cycle, cycle, cycle), 100).value().orElseThrow());
  }

  @Test
  void uncertain_rates_spread_the_forecast() {
    TrayPosterior rooting = TrayPosterior.of(List.of(new TrayCount(14, 24), new TrayCount(10, 24)));
    UncertainCycle believed = new UncertainCycle(10, rooting, new KnownRate(0.9), new KnownRate(0));
    UncertainCycle certain =
        new UncertainCycle(10, new KnownRate(rooting.mean()), new KnownRate(0.9), new KnownRate(0));
    BuildUpForecast wide =
        BuildUpForecast.of(5, List.of(believed, believed), 100).value().orElseThrow();
    BuildUpForecast narrow =
        BuildUpForecast.of(5, List.of(certain, certain), 100).value().orElseThrow();
    assertThat(wide.high() - wide.low()).isGreaterThan(narrow.high() - narrow.low());
    assertThat(wide.low()).isLessThanOrEqualTo(wide.middle());
  }

  @Test
  void a_forecast_beyond_counting_is_an_answer() {
    UncertainCycle cycle =
        new UncertainCycle(2_000, new KnownRate(0.5), new KnownRate(1), new KnownRate(0));
    assertThat(BuildUpForecast.of(5, List.of(cycle, cycle, cycle), 10))
        .isInstanceOf(Answer.Lacking.class);
  }

  @ParameterizedTest
  @CsvSource({"1, 0.5, 0.95", "100, 0.72, 0.9", "1000, 0.31, 0.5", "24, 1, 0.99", "7, 0.02, 0.8"})
  void one_cutting_fewer_would_not_suffice(int need, double rate, double confidence) {
    CuttingsNeeded needed = CuttingsNeeded.atRate(need, rate, confidence).value().orElseThrow();
    assertThat(needed.chance()).isGreaterThanOrEqualTo(confidence);
    if (needed.cuttings() > need) {
      assertThat(BinomialDistribution.of(needed.cuttings() - 1, rate).survivalProbability(need - 1))
          .isLessThan(confidence);
    }
  }

  @Test
  void a_large_trial_asks_for_about_as_many_as_a_known_rate() {
    int known = CuttingsNeeded.atRate(2_000, 0.5, 0.95).value().orElseThrow().cuttings();
    int learnt =
        CuttingsNeeded.afterTrial(2_000, 500_000, 1_000_000, 0.95).value().orElseThrow().cuttings();
    int small = CuttingsNeeded.afterTrial(2_000, 5, 10, 0.95).value().orElseThrow().cuttings();
    assertThat(learnt).isBetween(known, known + 10);
    assertThat(small).isGreaterThan(known + 1_000);
  }

  @Test
  void cuttings_that_hardly_ever_root_are_an_answer() {
    assertThat(CuttingsNeeded.atRate(100, 1e-6, 0.9)).isInstanceOf(Answer.Lacking.class);
    assertThat(CuttingsNeeded.afterTrial(1_000, 0, 40, 0.999)).isInstanceOf(Answer.Lacking.class);
    assertThat(CuttingsNeeded.atRate(Integer.MAX_VALUE, 1, 0.9)).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void impossible_questions_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Cycle(-1, 0.5, 0.5, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> new Cycle(1, 1.5, 0.5, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> new Cycle(1, Double.NaN, 0.5, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> new StockBuildUp(0, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new StockBuildUp(1, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> CuttingsNeeded.atRate(0, 0.5, 0.9));
    assertThatIllegalArgumentException().isThrownBy(() -> CuttingsNeeded.atRate(10, 0, 0.9));
    assertThatIllegalArgumentException().isThrownBy(() -> CuttingsNeeded.atRate(10, 0.5, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CuttingsNeeded.afterTrial(10, 12, 11, 0.9));
    assertThatIllegalArgumentException().isThrownBy(() -> new KnownRate(1.1));
  }

  private static Cycle any(Random random) {
    return new Cycle(
        1 + random.nextInt(8), random.nextDouble(), random.nextDouble(), random.nextDouble());
  }

  private static StockDistribution distribution(StockBuildUp stock) {
    return stock.distribution().value().orElseThrow();
  }
}
