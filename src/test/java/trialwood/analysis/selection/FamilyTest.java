package trialwood.analysis.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;

class FamilyTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void a_shrunken_mean_lies_between_the_family_and_all_families(int seed) {
    FamilyMeans fit = FamilyMeans.of(any(new Random(seed))).value().orElseThrow();
    for (FamilyMeans.ShrunkMean family : fit.families()) {
      double own = family.sample().mean();
      assertThat(fit.believed(family))
          .isBetween(Math.min(own, fit.mean()) - 1e-12, Math.max(own, fit.mean()) + 1e-12);
      assertThat(family.weight()).isBetween(0.0, 1.0);
      assertThat(family.reliability()).isBetween(0.0, 1.0);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void in_families_of_one_size_both_ways_to_the_variances_agree(int seed) {
    Random random = new Random(seed);
    var families = new ArrayList<FamilySample>();
    for (int i = 0; i < 12; i++) {
      families.add(family("F" + i, 6, 20 * random.nextGaussian(), random));
    }
    FamilyVariance anova = FamilyVariance.of(families).value().orElseThrow();
    FamilyMeans reml = FamilyMeans.of(families).value().orElseThrow();
    assertThat(reml.varianceOfFamilies())
        .isCloseTo(anova.varianceOfFamilies(), within(1e-8 * anova.varianceOfFamilies()));
    assertThat(reml.varianceWithin())
        .isCloseTo(anova.meanSquareWithin(), within(1e-8 * anova.meanSquareWithin()));
  }

  @Test
  void families_less_different_than_chance_have_no_variance_and_shrink_wholly() {
    List<FamilySample> alike =
        List.of(
            FamilySample.of("A", List.of(1.0, 5.0, 9.0)),
            FamilySample.of("B", List.of(2.0, 5.0, 8.0)),
            FamilySample.of("C", List.of(0.0, 5.0, 10.0, 5.1)));
    FamilyMeans fit = FamilyMeans.of(alike).value().orElseThrow();
    assertThat(fit.varianceOfFamilies()).isZero();
    assertThat(fit.of("A").effect()).isZero();
    assertThat(fit.of("A").reliability()).isZero();
    FamilyVariance anova = FamilyVariance.of(alike).value().orElseThrow();
    assertThat(anova.varianceOfFamilies()).isNegative();
    assertThat(anova.heritability(FamilyVariance.HALF_SIBS)).isNegative();
  }

  @Test
  void too_few_or_lifeless_families_are_an_answer() {
    FamilySample one = FamilySample.of("A", List.of(1.0, 2.0));
    List<List<FamilySample>> poor =
        List.of(
            List.of(),
            List.of(one),
            List.of(FamilySample.of("A", List.of(1.0)), FamilySample.of("B", List.of(2.0))),
            List.of(
                FamilySample.of("A", List.of(0.1, 0.1, 0.1)),
                FamilySample.of("B", List.of(0.7, 0.7, 0.7))));
    for (List<FamilySample> families : poor) {
      assertThat(FamilyVariance.of(families)).isInstanceOf(Answer.Lacking.class);
      assertThat(FamilyMeans.of(families)).isInstanceOf(Answer.Lacking.class);
    }
    assertThatIllegalArgumentException().isThrownBy(() -> FamilyMeans.of(List.of(one, one)));
    assertThatIllegalArgumentException().isThrownBy(() -> FamilySample.of("A", List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FamilySample.of("A", List.of(Double.NaN)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void a_shrunken_rate_lies_between_the_family_and_all_families(int seed) {
    Random random = new Random(seed);
    var counts = new ArrayList<FamilyCount>();
    for (int i = 0; i < 15; i++) {
      int seedlings = 1 + random.nextInt(40);
      double rate = random.nextDouble();
      int hits = (int) random.doubles(seedlings).filter(u -> u < rate).count();
      counts.add(new FamilyCount("F" + i, hits, seedlings));
    }
    FamilyRates moments = FamilyRates.byMoments(counts).value().orElseThrow();
    FamilyRates likelihood = FamilyRates.byLikelihood(counts).value().orElseThrow();
    assertThat(likelihood.logLikelihood()).isGreaterThanOrEqualTo(moments.logLikelihood());
    for (FamilyRates fit : List.of(moments, likelihood)) {
      for (FamilyRate family : fit.families()) {
        double own = family.count().share();
        assertThat(family.mean())
            .isBetween(Math.min(own, fit.mean()) - 1e-12, Math.max(own, fit.mean()) + 1e-12);
        assertThat(family.interval(0.95).contains(family.mean())).isTrue();
        assertThat(1 - family.chanceAtLeast(family.quantile(0.3))).isCloseTo(0.3, within(1e-9));
      }
    }
  }

  @Test
  void rates_that_show_no_difference_between_families_are_an_answer() {
    List<List<FamilyCount>> poor =
        List.of(
            List.of(),
            List.of(new FamilyCount("A", 3, 10)),
            List.of(new FamilyCount("A", 0, 10), new FamilyCount("B", 0, 12)),
            List.of(new FamilyCount("A", 10, 10), new FamilyCount("B", 12, 12)),
            List.of(new FamilyCount("A", 0, 1), new FamilyCount("B", 1, 1)),
            List.of(new FamilyCount("A", 5, 10), new FamilyCount("B", 6, 12)));
    for (List<FamilyCount> counts : poor) {
      assertThat(FamilyRates.byMoments(counts)).isInstanceOf(Answer.Lacking.class);
      assertThat(FamilyRates.byLikelihood(counts)).isInstanceOf(Answer.Lacking.class);
    }
    List<FamilyCount> allOrNothing =
        List.of(
            new FamilyCount("A", 10, 10), new FamilyCount("B", 0, 10), new FamilyCount("C", 9, 9));
    assertThat(FamilyRates.byMoments(allOrNothing)).isInstanceOf(Answer.Lacking.class);
    assertThat(FamilyRates.byLikelihood(allOrNothing)).isInstanceOf(Answer.Lacking.class);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void families_of_one_true_rate_are_taken_as_one_or_shrink_far(int seed) {
    Random random = new Random(seed);
    var counts = new ArrayList<FamilyCount>();
    for (int i = 0; i < 20; i++) {
      int hits = (int) random.doubles(30).filter(u -> u < 0.4).count();
      counts.add(new FamilyCount("F" + i, hits, 30));
    }
    FamilyRates.byLikelihood(counts)
        .value()
        .ifPresent(fit -> assertThat(fit.likeness()).isLessThan(0.1));
  }

  @Test
  void impossible_counts_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new FamilyCount("A", 3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new FamilyCount("A", 0, 0));
  }

  private static List<FamilySample> any(Random random) {
    var families = new ArrayList<FamilySample>();
    for (int i = 0; i < 5 + random.nextInt(20); i++) {
      families.add(family("F" + i, 1 + random.nextInt(12), 3 * random.nextGaussian(), random));
    }
    return families;
  }

  private static FamilySample family(String name, int plants, double mean, Random random) {
    var values = new ArrayList<Double>();
    for (int i = 0; i < plants; i++) {
      values.add(60 + mean + 5 * random.nextGaussian());
    }
    return FamilySample.of(name, values);
  }
}
