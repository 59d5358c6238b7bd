package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Interval;

class ComparisonsTest {

  private static AdjustedMeans means() {
    return Layouts.known(
            LinearModel.oneWay(
                PlotValues.of(12, 14, 13, 15, 16, 18, 17, 16, 20, 21, 19)
                    .by(
                        "entry",
                        List.of("a", "a", "a", "b", "b", "b", "b", "check", "check", "check", "c")),
                "entry"))
        .means("entry");
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34})
  void the_ways_of_judging_many_pairs_stand_in_their_order(long seed) {
    Layouts layout = Layouts.seeded(seed);
    PairwiseDifferences pairs =
        Layouts.known(LinearModel.inBlocks(layout.plots(layout.values()), "block", "entry"))
            .means("entry")
            .pairs();
    assertThat(pairs.pairs()).hasSize(layout.entries() * (layout.entries() - 1) / 2);
    for (PairwiseDifferences.Pair pair : pairs.pairs()) {
      assertThat(pair.falseDiscoveryRate()).isGreaterThanOrEqualTo(pair.p() * (1 - 1e-12));
      assertThat(pair.holm()).isGreaterThanOrEqualTo(pair.falseDiscoveryRate() * (1 - 1e-12));
      assertThat(pair.bonferroni()).isGreaterThanOrEqualTo(pair.holm() * (1 - 1e-12));
      assertThat(pairs.tukeyP(pair)).isBetween(pair.p() - 1e-12, pair.bonferroni() + 1e-12);
      assertThat(pairs.tukeyInterval(pair, 0.95).width())
          .isGreaterThan(2 * pair.leastSignificantDifference(0.05));
    }
  }

  @Test
  void an_interval_of_tukey_leaves_nothing_out_where_its_p_is_above_the_level() {
    PairwiseDifferences pairs = means().pairs();
    for (PairwiseDifferences.Pair pair : pairs.pairs()) {
      assertThat(pairs.tukeyInterval(pair, 0.95).contains(0)).isEqualTo(pairs.tukeyP(pair) > 0.05);
    }
  }

  @Test
  void the_intervals_of_all_are_those_of_each() {
    PairwiseDifferences pairs = means().pairs();
    CheckDifferences check = means().against("check").value().orElseThrow();
    pairs
        .tukeyIntervals(0.9)
        .forEach((pair, all) -> assertThat(all).isEqualTo(pairs.tukeyInterval(pair, 0.9)));
    check
        .intervals(0.9)
        .forEach((entry, all) -> assertThat(all).isEqualTo(check.interval(entry, 0.9)));
    assertThat(pairs.tukeyIntervals(0.9)).hasSize(6);
    assertThat(check.intervals(0.9)).hasSize(3);
  }

  @Test
  void a_pair_can_be_asked_for_either_way_round() {
    PairwiseDifferences pairs = means().pairs();
    PairwiseDifferences.Pair pair = pairs.pair("b", "a");
    assertThat(pairs.pair("a", "b").difference().estimate())
        .isEqualTo(-pair.difference().estimate());
    assertThat(pairs.tukeyP(pairs.pair("a", "b"))).isEqualTo(pairs.tukeyP(pair));
    assertThatIllegalArgumentException().isThrownBy(() -> pairs.pair("a", "z"));
    assertThat(pairs.commonStandardError().lack()).isPresent();
  }

  @Test
  void with_one_entry_the_comparison_with_the_check_is_a_plain_t() {
    AdjustedMeans two =
        Layouts.known(
                LinearModel.oneWay(
                    PlotValues.of(1, 2, 4, 3, 6, 5).by("g", Layouts.repeated(3, "check", "new")),
                    "g"))
            .means("g");
    CheckDifferences check = two.against("check").value().orElseThrow();
    CheckDifferences.Entry entry = check.entry("new");
    assertThat(check.twoSidedP(entry))
        .isCloseTo(two.pairs().pair("new", "check").p(), within(1e-12));
    assertThat(check.aboveP(entry) + check.belowP(entry)).isCloseTo(1, within(1e-12));
  }

  @Test
  void every_entry_is_compared_with_the_check_and_the_interval_agrees_with_the_p() {
    CheckDifferences check = means().against("check").value().orElseThrow();
    assertThat(check.entries())
        .extracting(CheckDifferences.Entry::name)
        .containsExactly("a", "b", "c");
    for (CheckDifferences.Entry entry : check.entries()) {
      Interval interval = check.interval(entry, 0.95);
      assertThat(interval.contains(0)).isEqualTo(check.twoSidedP(entry) > 0.05);
    }
    assertThatIllegalArgumentException().isThrownBy(() -> check.entry("check"));
    assertThatIllegalArgumentException().isThrownBy(() -> means().against("z"));
  }

  @Test
  void entries_that_never_met_the_check_are_named() {
    PlotValues plots =
        PlotValues.of(4, 6, 5, 6, 9, 12, 10, 11)
            .by("block", List.of("1", "1", "2", "2", "3", "3", "4", "4"))
            .by("entry", List.of("a", "check", "a", "check", "c", "d", "c", "d"));
    CheckDifferences check =
        Layouts.known(LinearModel.inBlocks(plots, "block", "entry"))
            .means("entry")
            .against("check")
            .value()
            .orElseThrow();
    assertThat(check.entries()).extracting(CheckDifferences.Entry::name).containsExactly("a");
    assertThat(check.lacking())
        .containsExactly(
            "The difference of c and check cannot be estimated: some combinations have no value.",
            "The difference of d and check cannot be estimated: some combinations have no value.");
  }

  @Test
  void a_contrast_of_two_means_is_their_difference_and_its_square_its_sum_of_squares() {
    Contrast contrast = means().contrast(Map.of("b", 1.0, "a", -1.0)).value().orElseThrow();
    PairwiseDifferences.Pair pair = means().pairs().pair("b", "a");
    assertThat(contrast.estimate().estimate())
        .isCloseTo(pair.difference().estimate(), within(1e-12));
    assertThat(contrast.p()).isCloseTo(pair.p(), within(1e-12));
    // 4 and 3 plots: ss = d² / (1/4 + 1/3)
    assertThat(contrast.ss()).isCloseTo(3.5 * 3.5 / (1.0 / 4 + 1.0 / 3), within(1e-9));
  }

  @Test
  void coefficients_that_do_not_add_up_to_nothing_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> means().contrast(Map.of("a", 1.0)));
    assertThatIllegalArgumentException().isThrownBy(() -> means().contrast(Map.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> means().contrast(Map.of("a", 1.0, "z", -1.0)));
  }

  @Test
  void trends_over_equal_steps_have_the_coefficients_of_the_tables() {
    // Fisher and Yates, Statistical Tables, orthogonal polynomials
    assertThat(Contrast.polynomial(3, 1)).containsExactly(-1, 0, 1);
    assertThat(Contrast.polynomial(3, 2)).containsExactly(1, -2, 1);
    assertThat(Contrast.polynomial(5, 2)).containsExactly(2, -1, -2, -1, 2);
    assertThat(Contrast.polynomial(5, 3)).containsExactly(-1, 2, 0, -2, 1);
    assertThat(Contrast.polynomial(6, 4)).containsExactly(1, -3, 2, 2, -3, 1);
    assertThatIllegalArgumentException().isThrownBy(() -> Contrast.polynomial(3, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> Contrast.polynomial(1, 1));
  }

  @Test
  void p_values_are_adjusted_by_hand() {
    // worked by hand from the definitions
    double[] p = {0.04, 0.01, 0.03};
    assertThat(AdjustedP.bonferroni(p))
        .containsExactly(new double[] {0.12, 0.03, 0.09}, within(1e-15));
    assertThat(AdjustedP.holm(p)).containsExactly(new double[] {0.06, 0.03, 0.06}, within(1e-15));
    assertThat(AdjustedP.falseDiscoveryRate(p))
        .containsExactly(new double[] {0.04, 0.03, 0.04}, within(1e-15));
    assertThat(AdjustedP.holm()).isEmpty();
  }
}
