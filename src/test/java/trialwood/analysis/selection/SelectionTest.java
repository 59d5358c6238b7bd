package trialwood.analysis.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SelectionTest {

  /** Exact forms of the first order statistics: Harter (1961), Biometrika 48, 151–165. */
  @Test
  void the_best_of_two_and_of_three_are_known_in_closed_form() {
    assertThat(new BestOfMany(1, 2).intensity()).isCloseTo(1 / Math.sqrt(Math.PI), within(1e-13));
    assertThat(new BestOfMany(1, 3).intensity()).isCloseTo(1.5 / Math.sqrt(Math.PI), within(1e-13));
    assertThat(new BestOfMany(2, 3).intensity())
        .isCloseTo(0.75 / Math.sqrt(Math.PI), within(1e-13));
  }

  @ParameterizedTest
  @CsvSource({"1, 10", "3, 12", "7, 40", "50, 1000", "999, 1000"})
  void the_best_lie_as_far_above_the_mean_as_the_rest_below(int selected, int candidates) {
    double best = selected * new BestOfMany(selected, candidates).intensity();
    double rest =
        (candidates - selected) * new BestOfMany(candidates - selected, candidates).intensity();
    assertThat(best).isCloseTo(rest, within(1e-9 * best));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.05, 0.2, 0.5})
  void many_candidates_approach_the_truncation_of_very_many(double share) {
    int candidates = 2_000_000_000;
    assertThat(new BestOfMany((int) (share * candidates), candidates).intensity())
        .isCloseTo(Truncation.keeping(share).intensity(), within(1e-7));
  }

  @Test
  void the_best_of_more_candidates_looks_better() {
    double last = 0;
    for (int candidates = 2; candidates < 2_000_000; candidates *= 3) {
      double intensity = new BestOfMany(1, candidates).intensity();
      assertThat(intensity).isGreaterThan(last);
      last = intensity;
    }
  }

  @Test
  void without_reliability_the_whole_lead_is_the_winners_curse() {
    BestOfMany best = new BestOfMany(1, 40);
    assertThat(best.trueLead(10, 0)).isZero();
    assertThat(best.trueLead(10, 1)).isEqualTo(best.apparentLead(10));
    assertThat(best.trueLead(10, 0.4)).isCloseTo(4 * best.intensity(), within(1e-12));
    assertThat(new BestOfMany(40, 40).apparentLead(10)).isZero();
  }

  @Test
  void impossible_selections_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new BestOfMany(3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new BestOfMany(0, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new BestOfMany(1, 9).trueLead(1, 1.2));
    assertThatIllegalArgumentException().isThrownBy(() -> Truncation.keeping(0));
    assertThatIllegalArgumentException().isThrownBy(() -> Response.keeping(0.1, 1.5, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> Response.keeping(0.1, 0.5, -3));
  }

  @Test
  void an_index_of_one_trait_is_selection_for_that_trait() {
    IndexTraits height = new IndexTraits(new double[][] {{25}}, new double[][] {{9}});
    SelectionIndex index = height.forWorth(1);
    assertThat(index.traitResponses(2)[0])
        .isCloseTo(height.singleTraitResponse(0, 2), within(1e-12));
    assertThat(index.accuracy()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void wanted_gains_come_in_the_proportions_wanted() {
    IndexTraits traits =
        new IndexTraits(
            new double[][] {{120, 18, -3}, {18, 36, 2.4}, {-3, 2.4, 1.8}},
            new double[][] {{42, 9, -1.5}, {9, 10, 1.1}, {-1.5, 1.1, 0.5}});
    double[] gains = traits.withIndex(traits.weightsForGains(3, 1.5, 0.2));
    assertThat(gains).containsExactly(new double[] {3, 1.5, 0.2}, within(1e-9));
  }

  @Test
  void a_trait_worth_nothing_and_not_inherited_gains_nothing() {
    IndexTraits traits =
        new IndexTraits(new double[][] {{4, 0}, {0, 9}}, new double[][] {{0, 0}, {0, 0}});
    SelectionIndex index = traits.forWorth(1, 2);
    assertThat(index.accuracy()).isZero();
    assertThat(index.traitResponses(1)).containsExactly(0, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> traits.weightsForGains(1, 1));
  }

  @Test
  void tables_that_cannot_be_true_are_refused() {
    double[][] one = {{1}};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IndexTraits(new double[][] {{1, 2}, {2, 1}}, new double[2][2]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IndexTraits(new double[][] {{1, 0.5}, {0.2, 1}}, new double[2][2]));
    assertThatIllegalArgumentException().isThrownBy(() -> new IndexTraits(one, new double[2][2]));
    assertThatIllegalArgumentException().isThrownBy(() -> new IndexTraits(new double[0][0], one));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IndexTraits(one, new double[][] {{-1}}));
    assertThatIllegalArgumentException().isThrownBy(() -> new IndexTraits(one, one).forWorth(1, 2));
  }
}
