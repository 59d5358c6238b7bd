package trialwood.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a fit says of effects and errors, against full matrices at the same variances. */
class MixedFitTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void shrunken_effects_and_their_errors_are_those_of_the_full_matrices(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 7, 3, 2, 2, 0.2);
    List<Factor> terms = List.of(field.entry(), field.entryAtSite(), field.place());
    MixedFit fit = fit(field, List.of(), terms);
    DenseModel dense = dense(field, List.of(), terms, fit);
    for (int k = 0; k < terms.size(); k++) {
      List<RandomEffect> effects = fit.effects(terms.get(k).name());
      FullMatrix errors = dense.effectErrors(k);
      for (int i = 0; i < effects.size(); i++) {
        RandomEffect effect = effects.get(i);
        assertThat(effect.level()).isEqualTo(terms.get(k).levels().get(i));
        assertThat(effect.effect()).isCloseTo(dense.effects(k).get(i, 0), within(1e-8));
        assertThat(effect.errorVariance()).isCloseTo(errors.get(i, i), within(1e-8));
        assertThat(effect.se()).isEqualTo(Math.sqrt(effect.errorVariance()));
        assertThat(effect.conditionalVariance())
            .isCloseTo(dense.conditionalErrors(k).get(i, i), within(1e-8));
        for (int j = 0; j < effects.size(); j++) {
          assertThat(fit.errorCovariance(terms.get(k).name()).get(i, j))
              .isCloseTo(errors.get(i, j), within(1e-8));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void adjusted_means_and_their_errors_are_those_of_the_full_matrices(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 5, 3, 2, 2, 0.2);
    List<Factor> terms = List.of(field.block(), field.entryAtSite());
    List<Factor> fixed = List.of(field.entry());
    MixedFit fit = fit(field, fixed, terms);
    DenseModel dense = dense(field, fixed, terms, fit);
    AdjustedMeans means = fit.means("entry");
    FullMatrix errors = dense.fixedErrors();
    for (int i = 0; i < 5; i++) {
      String level = means.levels().get(i);
      assertThat(means.mean(level)).isCloseTo(dense.fixedEffects().get(i, 0), within(1e-8));
      assertThat(means.se(level)).isCloseTo(Math.sqrt(errors.get(i, i)), within(1e-8));
      double apart = errors.get(0, 0) + errors.get(i, i) - 2 * errors.get(0, i);
      assertThat(means.sed("E0", level)).isCloseTo(Math.sqrt(Math.max(0, apart)), within(1e-7));
    }
    FixedEffect second = fit.fixedEffects().get(1);
    assertThat(second.level()).isEqualTo("E1");
    assertThat(second.estimate()).isCloseTo(means.mean("E1") - means.mean("E0"), within(1e-9));
    assertThat(second.se()).isCloseTo(means.sed("E1", "E0"), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void errors_of_the_variances_come_from_the_information_of_the_full_matrices(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 9, 4, 2, 2, 0.1);
    List<Factor> terms = List.of(field.entry(), field.entryAtSite(), field.place());
    MixedFit fit = fit(field, List.of(), terms);
    DenseModel dense = dense(field, List.of(), terms, fit);
    int count = terms.size() + 1;
    var expected = FullMatrix.zero(count, count);
    var observed = FullMatrix.zero(count, count);
    for (int k = 0; k < count; k++) {
      for (int l = 0; l < count; l++) {
        double half = dense.expectedInformation(k, l);
        expected.set(k, l, half);
        observed.set(k, l, dense.averageInformation(k, l) - half);
      }
    }
    for (int k = 0; k < count; k++) {
      assertThat(fit.varianceErrors().expected().get(k).orElseThrow())
          .isCloseTo(Math.sqrt(expected.inverse().get(k, k)), within(1e-6));
      assertThat(fit.varianceErrors().observed().get(k).orElseThrow())
          .isCloseTo(Math.sqrt(observed.inverse().get(k, k)), within(1e-6));
    }
  }

  @Test
  void a_variance_on_the_edge_has_no_error() {
    MixedFit fit = MixedModelTest.alikeGroups();
    assertThat(fit.varianceErrors().expected().get(0)).isEmpty();
    assertThat(fit.varianceErrors().observed().get(0)).isEmpty();
    // one variance on 7 degrees of freedom: s² √(2/7)
    assertThat(fit.varianceErrors().expected().get(1).orElseThrow())
        .isCloseTo(fit.variance("Residual") * Math.sqrt(2.0 / 7), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void shrinkage_lies_between_the_mean_of_all_and_the_raw_mean(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 8, 3, 1, 1, 0.3);
    MixedFit fit = fit(field, List.of(), List.of(field.entry()));
    double all = fit.fixedEffects().get(0).estimate();
    double[] raw = field.levelMeans(field.entry());
    double variance = fit.variance("entry");
    List<RandomEffect> effects = fit.effects("entry");
    for (int i = 0; i < raw.length; i++) {
      double share = Math.abs(effects.get(i).effect() / (raw[i] - all));
      assertThat(effects.get(i).effect() * (raw[i] - all)).isGreaterThanOrEqualTo(0);
      assertThat(share).isBetween(0.0, 1.0);
      assertThat(effects.get(i).reliability())
          .isCloseTo(
              variance == 0 ? 0 : 1 - effects.get(i).errorVariance() / variance, within(1e-12));
    }
  }

  @Test
  void heritability_of_balanced_entries_is_one_minus_error_over_entry_mean_square() {
    Field field = Field.drawn(new SplittableRandom(3), 10, 4, 1, 1, 0);
    MixedFit fit = fit(field, List.of(), List.of(field.entry()));
    double between = field.meanSquare(field.entry(), field.all());
    double inside = field.meanSquare(field.each(), field.entry());
    Heritability found = Heritability.of(fit, "entry").value().orElseThrow();
    assertThat(found.cullis()).isCloseTo(1 - inside / between, within(1e-7));
    assertThat(Heritability.varianceOfMean(fit, "entry", Map.of("Residual", 4.0)))
        .isCloseTo(between / 4, within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Heritability.varianceOfMean(fit, "entry", Map.of("Residual", 0.0)));
  }

  @Test
  void without_variance_between_entries_nothing_is_theirs() {
    assertThat(Heritability.of(MixedModelTest.alikeGroups(), "group").lack())
        .hasValue("The records show no variance between levels of group.");
  }

  @Test
  void what_the_model_does_not_have_is_refused() {
    Field field = Field.drawn(new SplittableRandom(4), 5, 2, 1, 2, 0);
    MixedFit fit = fit(field, List.of(field.entry()), List.of(field.place()));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.variance("entry"));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.means("place"));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.effects("entry"));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.errorCovariance("site"));
    assertThatIllegalArgumentException().isThrownBy(() -> fit.means("entry").mean("E9"));
  }

  private static MixedFit fit(Field field, List<Factor> fixed, List<Factor> random) {
    MixedModel model = MixedModel.of(field.values());
    for (Factor factor : fixed) {
      model = model.fixed(factor);
    }
    for (Factor factor : random) {
      model = model.random(factor);
    }
    return model.fit().value().orElseThrow();
  }

  private static DenseModel dense(
      Field field, List<Factor> fixed, List<Factor> random, MixedFit fit) {
    double[] variances = new double[random.size() + 1];
    for (int k = 0; k < random.size(); k++) {
      variances[k] = fit.variance(random.get(k).name());
    }
    variances[random.size()] = fit.variance("Residual");
    return new DenseModel(
        field.values(), FixedPart.of(fixed, field.values().length), random, variances);
  }
}
