package trialwood.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Records that no mixed model can be fitted to, and what is said of them. */
class UnfittableModelTest {

  @Test
  void entries_of_sites_without_a_common_entry_have_no_means() {
    Factor entry = Factor.of("entry", List.of("A", "B", "A", "B", "C", "D", "C", "D"));
    Factor site = Factor.of("site", List.of("n", "n", "n", "n", "s", "s", "s", "s"));
    MixedFit fit =
        MixedModelTest.fitted(
            MixedModel.of(new double[] {1, 2, 3, 5, 2, 4, 8, 1}).fixed(entry).fixed(site));
    assertThat(fit.confounded()).containsExactly("site s");
    assertThat(fit.fixedEffectsCount()).isEqualTo(4);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fit.means("entry"))
        .withMessage("Confounded: site s.");
  }

  @Test
  void a_value_that_is_no_number_is_refused() {
    for (double value : new double[] {Double.NaN, Double.NEGATIVE_INFINITY}) {
      assertThatIllegalArgumentException().isThrownBy(() -> MixedModel.of(new double[] {1, value}));
    }
  }

  @Test
  void a_factor_of_other_values_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MixedModel.of(new double[] {1, 2}).random(Field.groups(1, 2)))
        .withMessage("group classifies 3 values, not 2.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Factor.crossed(Field.groups(1, 2), Field.groups(2, 2)));
  }

  @Test
  void without_values_there_is_no_fit() {
    assertThat(MixedModel.of(new double[0]).fit().lack()).hasValue("There are no values.");
  }

  @Test
  void as_many_effects_as_values_leave_nothing_to_estimate_from() {
    Factor each = Factor.of("entry", List.of("A", "B", "C"));
    assertThat(MixedModel.of(new double[] {1, 2, 4}).fixed(each).fit().lack())
        .hasValue("3 values are too few for 3 fixed effects.");
  }

  @Test
  void values_all_alike_do_not_vary() {
    for (double value : new double[] {0, 5.3, -1e9 / 3}) {
      double[] values = new double[6];
      Arrays.fill(values, value);
      assertThat(MixedModel.of(values).random(Field.groups(3, 3)).fit().lack())
          .hasValue("The values do not vary.");
    }
  }

  @Test
  void terms_that_cannot_be_told_apart_are_named() {
    double[] values = {1, 3, 2, 5, 4, 4};
    MixedModel model = MixedModel.of(values);
    Factor pairs = Field.groups(2, 2, 2);
    Factor same = Factor.of("row", List.of("x", "x", "b", "b", "a", "a"));
    assertThat(model.random(pairs).random(same).fit().lack().orElseThrow())
        .contains("sort the values alike");
    assertThat(model.random(Field.groups(1, 1, 1, 1, 1, 1)).fit().lack())
        .hasValue("group has one value a level: it cannot be told from the residual.");
    assertThat(model.random(Field.groups(6)).fit().lack())
        .hasValue("group has one level: its variance cannot be estimated.");
    assertThat(model.fixed(same).random(pairs).fit().lack())
        .hasValue("group is settled by the fixed row: its variance cannot be estimated.");
    assertThat(model.fixed(same).random(Field.groups(4, 2)).fit().lack()).isPresent();
  }

  @Test
  void groups_without_any_spread_inside_leave_no_residual_to_be_found() {
    double[] values = {1, 1, 5, 5, 2, 2};
    assertThat(MixedModel.of(values).random(Field.groups(2, 2, 2)).fit().lack()).isPresent();
  }

  @Test
  void values_too_large_to_be_squared_are_not_answered_with_a_number() {
    double[] values = {1e200, 2e200, 3e200, -4e200};
    assertThat(MixedModel.of(values).random(Field.groups(2, 2)).fit().lack()).isPresent();
  }

  @Test
  void means_of_one_level_have_no_difference() {
    Factor one = Factor.of("entry", List.of("A", "A", "A", "A"));
    MixedFit fit =
        MixedModelTest.fitted(
            MixedModel.of(new double[] {1, 2, 4, 7}).fixed(one).random(Field.groups(2, 2)));
    assertThat(fit.means("entry").mean("A")).isCloseTo(3.5, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.means("entry").meanSed());
  }

  @Test
  void a_name_stands_for_one_factor_of_a_model() {
    Factor entry = Factor.of("entry", List.of("A", "A", "B", "B"));
    Factor residual = Factor.of("Residual", List.of("A", "A", "B", "B"));
    MixedModel model = MixedModel.of(new double[] {1, 2, 3, 5}).random(entry);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> model.fixed(entry))
        .withMessage("The model has entry already.");
    assertThatIllegalArgumentException().isThrownBy(() -> model.random(residual));
  }
}
