package trialwood.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Closed forms of balanced designs: Searle, Casella and McCulloch (1992) Variance Components,
 * chapter 4; and what must not change a fit.
 */
class MixedModelTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void balanced_groups_have_the_variances_of_their_mean_squares(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 6, 5, 1, 1, 0);
    double between = field.meanSquare(field.entry(), field.all());
    double inside = field.meanSquare(field.each(), field.entry());
    MixedFit fit = fitted(MixedModel.of(field.values()).random(field.entry()));
    if (between > inside) {
      assertThat(fit.variance("entry")).isCloseTo((between - inside) / 5, within(1e-6));
      assertThat(fit.variance("Residual")).isCloseTo(inside, within(1e-6));
    } else {
      assertThat(fit.variance("entry")).isZero();
      assertThat(fit.variance("Residual"))
          .isCloseTo(field.meanSquare(field.each(), field.all()), within(1e-6));
    }
    FixedEffect mean = fit.fixedEffects().get(0);
    assertThat(mean.estimate()).isCloseTo(field.mean(), within(1e-9));
    assertThat(mean.se())
        .isCloseTo(
            Math.sqrt(fit.variance("entry") / 6 + fit.variance("Residual") / 30), within(1e-9));
  }

  @Test
  void balanced_nested_terms_have_the_variances_of_their_mean_squares() {
    Field field = Field.drawn(new SplittableRandom(2), 4, 6, 3, 1, 0);
    double sites = field.meanSquare(field.site(), field.all());
    double places = field.meanSquare(field.place(), field.site());
    double plots = field.meanSquare(field.each(), field.place());
    assertThat(sites).isGreaterThan(places);
    assertThat(places).isGreaterThan(plots);
    MixedFit fit = fitted(MixedModel.of(field.values()).random(field.site()).random(field.place()));
    assertThat(fit.variance("Residual")).isCloseTo(plots, within(1e-5));
    assertThat(fit.variance("place")).isCloseTo((places - plots) / 4, within(1e-5));
    assertThat(fit.variance("site")).isCloseTo((sites - places) / 12, within(1e-5));
  }

  @Test
  void balanced_blocks_give_raw_means_and_the_error_of_the_analysis_of_variance() {
    Field field = Field.drawn(new SplittableRandom(7), 5, 4, 1, 1, 0);
    Factor entry = field.entry();
    MixedFit fit = fitted(MixedModel.of(field.values()).fixed(entry).random(field.site()));
    AdjustedMeans means = fit.means("entry");
    double[] raw = field.levelMeans(entry);
    for (int i = 0; i < raw.length; i++) {
      assertThat(means.mean("E" + i)).isCloseTo(raw[i], within(1e-9));
    }
    double total = field.meanSquare(field.each(), field.all()) * 19;
    double error =
        (total
                - field.meanSquare(entry, field.all()) * 4
                - field.meanSquare(field.site(), field.all()) * 3)
            / 12;
    assertThat(fit.variance("Residual")).isCloseTo(error, within(1e-6));
    assertThat(means.sed("E0", "E3")).isCloseTo(Math.sqrt(2 * error / 4), within(1e-6));
    assertThat(means.meanSed()).isCloseTo(Math.sqrt(2 * error / 4), within(1e-6));
    assertThat(means.meanDifferenceVariance()).isCloseTo(2 * error / 4, within(1e-6));
  }

  @Test
  void groups_no_more_unlike_than_their_values_have_a_variance_of_exactly_0() {
    MixedFit fit = alikeGroups();
    assertThat(fit.variance("group")).isZero();
    assertThat(fit.variance("Residual")).isCloseTo(8.0 / 7, within(1e-8));
    assertThat(fit.effects("group")).allSatisfy(effect -> assertThat(effect.effect()).isZero());
    assertThat(fit.effects("group"))
        .allSatisfy(effect -> assertThat(effect.reliability()).isZero());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void beside_a_variance_of_0_the_others_are_as_without_its_term(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 6, 3, 2, 3, 0.1);
    MixedModel without = MixedModel.of(field.values()).random(field.entry()).random(field.place());
    MixedFit fit = fitted(without.random(field.block())); // invented without effects of blocks
    MixedFit less = fitted(without);
    if (fit.variance("block") == 0) {
      assertThat(fit.variance("entry")).isCloseTo(less.variance("entry"), within(1e-4));
      assertThat(fit.variance("Residual")).isCloseTo(less.variance("Residual"), within(1e-4));
      assertThat(fit.criterion()).isCloseTo(less.criterion(), within(1e-7));
    } else {
      assertThat(fit.criterion()).isLessThan(less.criterion());
    }
  }

  @Test
  void some_of_these_invented_fields_have_blocks_of_no_variance() {
    long zeros =
        LongStream.rangeClosed(1, 8)
            .filter(
                seed -> {
                  Field field = Field.drawn(new SplittableRandom(seed), 6, 3, 2, 3, 0.1);
                  return fitted(
                              MixedModel.of(field.values())
                                  .random(field.entry())
                                  .random(field.place())
                                  .random(field.block()))
                          .variance("block")
                      == 0;
                })
            .count();
    assertThat(zeros).isBetween(1L, 7L);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void a_better_season_for_all_changes_no_difference_between_entries(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 5, 3, 2, 2, 0.2);
    double[] raised = field.values();
    int[] place = field.place().codes();
    for (int i = 0; i < raised.length; i++) {
      raised[i] += 13.7 * place[i] - 30;
    }
    MixedFit before = entriesInPlaces(field, field.values());
    MixedFit after = entriesInPlaces(field, raised);
    AdjustedMeans means = before.means("entry");
    AdjustedMeans others = after.means("entry");
    for (String level : means.levels()) {
      assertThat(others.mean(level) - others.mean("E0"))
          .isCloseTo(means.mean(level) - means.mean("E0"), within(1e-5));
      assertThat(others.sed(level, "E1")).isCloseTo(means.sed(level, "E1"), within(1e-5));
    }
    assertThat(after.criterion()).isCloseTo(before.criterion(), within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void other_labels_change_nothing(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 6, 3, 2, 2, 0.2);
    MixedFit before = entriesAtRandom(field, field.values());
    Factor entry = field.by("entry", plot -> "x" + (9 - plot.entry()));
    Factor site = field.by("site", plot -> "y" + (9 - plot.site()));
    Factor place = field.by("place", plot -> (9 - plot.season()) + "-" + plot.site());
    MixedFit after =
        fitted(
            MixedModel.of(field.values())
                .random(place)
                .random(Factor.crossed(site, entry))
                .random(entry));
    assertThat(after.criterion()).isCloseTo(before.criterion(), within(1e-7));
    assertThat(after.variance("entry")).isCloseTo(before.variance("entry"), within(1e-4));
    assertThat(after.variance("site:entry")).isCloseTo(before.variance("entry:site"), within(1e-4));
    List<RandomEffect> effects = before.effects("entry");
    List<RandomEffect> mirrored = after.effects("entry");
    for (int i = 0; i < effects.size(); i++) {
      RandomEffect same = mirrored.get(effects.size() - 1 - i);
      assertThat(same.effect()).isCloseTo(effects.get(i).effect(), within(1e-4));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e3, 1e5, 1e7})
  void a_far_zero_point_of_the_scale_changes_no_variance(double shift) {
    Field field = Field.drawn(new SplittableRandom(5), 7, 3, 2, 2, 0.1);
    double[] shifted = Arrays.stream(field.values()).map(value -> value + shift).toArray();
    MixedFit before = entriesAtRandom(field, field.values());
    MixedFit after = entriesAtRandom(field, shifted);
    for (VarianceComponent component : before.variances()) {
      assertThat(after.variance(component.term())).isCloseTo(component.variance(), within(1e-3));
    }
  }

  @Test
  void the_end_of_the_search_is_a_lowest_point() {
    Field field = Field.drawn(new SplittableRandom(11), 7, 3, 2, 2, 0.25);
    List<Factor> random = List.of(field.entry(), field.entryAtSite(), field.place());
    MixedModel model = MixedModel.of(field.values());
    for (Factor term : random) {
      model = model.random(term);
    }
    MixedFit fit = fitted(model);
    double[] best = fit.variances().stream().mapToDouble(VarianceComponent::variance).toArray();
    Layout layout =
        Layout.of(field.values(), FixedPart.of(List.of(), field.values().length), random);
    for (int term = 0; term < best.length; term++) {
      for (double factor : new double[] {0.9, 1.1}) {
        double[] moved = best.clone();
        moved[term] = moved[term] * factor + (moved[term] == 0 ? 0.01 : 0);
        assertThat(new Evaluation(layout, moved).criterion()).isGreaterThan(fit.criterion());
      }
    }
  }

  @Test
  void without_random_terms_the_residual_is_the_mean_square_left() {
    MixedFit fit = fitted(MixedModel.of(new double[] {1, 2, 4, 7}).fixed(Field.groups(2, 2)));
    assertThat(fit.variance("Residual")).isCloseTo(2.5, within(1e-8)); // (0.5 + 4.5) ÷ 2
    assertThat(fit.values()).isEqualTo(4);
    assertThat(fit.variances()).hasSize(1);
  }

  /** Two groups of the same mean: 1, 3, 1, 3 twice; squares 8 on 7 degrees of freedom. */
  static MixedFit alikeGroups() {
    return fitted(MixedModel.of(new double[] {1, 3, 1, 3, 1, 3, 1, 3}).random(Field.groups(4, 4)));
  }

  private static MixedFit entriesInPlaces(Field field, double[] values) {
    return fitted(
        MixedModel.of(values)
            .fixed(field.entry())
            .fixed(field.place())
            .random(field.entryAtSite())
            .random(field.block()));
  }

  private static MixedFit entriesAtRandom(Field field, double[] values) {
    return fitted(
        MixedModel.of(values)
            .random(field.entry())
            .random(field.entryAtSite())
            .random(field.place()));
  }

  static MixedFit fitted(MixedModel model) {
    return model.fit().value().orElseThrow();
  }
}
