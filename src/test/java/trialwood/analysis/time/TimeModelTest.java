package trialwood.analysis.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeModelTest {

  private static final double LOCATION = Math.log(22);
  private static final double SCALE = 0.25;

  @Test
  void the_fraction_that_never_roots_is_found_again() {
    List<RootedBetween> looks =
        Looks.logNormal(new SplittableRandom(11), 4000, LOCATION, SCALE, 0.3);
    TimeFit fit = cured(looks);
    double error = fit.covariance().error(2) * 0.3 * 0.7;
    assertThat(error).isBetween(0.006, 0.009); // binomial alone: √(0.3 · 0.7/4000) = 0.0072
    assertThat(fit.never().get(0)).isCloseTo(0.3, within(3 * error));
    assertThat(fit.locations().get(0)).isCloseTo(LOCATION, within(3 * fit.coefficientError(0)));
    assertThat(fit.scale()).isCloseTo(SCALE, within(3 * SCALE * fit.logScaleError()));
  }

  @Test
  void its_standard_errors_are_those_of_repeated_trials() {
    var random = new SplittableRandom(12);
    var locations = new ArrayList<Double>();
    double claimed = 0;
    for (int trial = 0; trial < 200; trial++) {
      TimeFit fit = cured(Looks.logNormal(random, 150, LOCATION, SCALE, 0.25));
      locations.add(fit.locations().get(0));
      claimed += fit.coefficientError(0) / 200;
    }
    double mean = locations.stream().mapToDouble(x -> x).average().orElseThrow();
    double sd = Math.sqrt(locations.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum() / 199);
    assertThat(claimed).isCloseTo(sd, within(0.15 * sd)); // 200 trials know the sd to 5 %
    assertThat(mean).isCloseTo(LOCATION, within(4 * sd / Math.sqrt(200)));
  }

  @ParameterizedTest
  @EnumSource(TimeShape.class)
  void with_a_fraction_of_0_the_plain_fit_comes_out(TimeShape shape) {
    // all root: no cutting asks for a fraction, and the two models are one
    List<RootedBetween> looks = new ArrayList<>();
    for (RootedBetween look : Looks.logNormal(new SplittableRandom(13), 200, LOCATION, SCALE, 0)) {
      if (look.rooted()) {
        looks.add(look);
      }
    }
    TimeFit plain = TimeModel.of(shape).fitOne(looks).value().orElseThrow();
    TimeFit cured = TimeModel.withNeverRooting(shape).fitOne(looks).value().orElseThrow();
    assertThat(cured.never()).containsExactly(0.0);
    assertThat(cured.logLikelihood()).isCloseTo(plain.logLikelihood(), within(1e-9));
    assertThat(cured.locations().get(0)).isCloseTo(plain.locations().get(0), within(1e-7));
  }

  @Test
  void a_fraction_that_the_likelihood_puts_at_0_is_0() {
    // looks end early: those not rooted yet are what the tail of the plain fit expects, or fewer
    List<RootedBetween> looks =
        List.of(
            new RootedBetween(0, 14, 10),
            new RootedBetween(14, 18, 30),
            new RootedBetween(18, 21, 45),
            new RootedBetween(21, 24, 60),
            RootedBetween.notBy(24, 40));
    TimeFit plain = TimeModel.of(TimeShape.WEIBULL).fitOne(looks).value().orElseThrow();
    TimeFit cured =
        TimeModel.withNeverRooting(TimeShape.WEIBULL).fitOne(looks).value().orElseThrow();
    assertThat(cured.never()).containsExactly(0.0);
    assertThat(cured.logLikelihood()).isCloseTo(plain.logLikelihood(), within(1e-7));
    assertThat(cured.logScale()).isCloseTo(plain.logScale(), within(1e-5));
  }

  @Test
  void a_time_ratio_is_found_again_though_the_shares_that_root_differ() {
    var random = new SplittableRandom(14);
    List<TreatmentTimes> treatments =
        List.of(
            new TreatmentTimes("none", Looks.logNormal(random, 1500, LOCATION, SCALE, 0.5)),
            new TreatmentTimes(
                "IBA", Looks.logNormal(random, 1500, LOCATION + Math.log(0.8), SCALE, 0.1)));
    TimeModel model = TimeModel.withNeverRooting(TimeShape.LOG_NORMAL);
    TimeFit fit = model.fit(treatments).value().orElseThrow();
    assertThat(fit.timeRatioInterval(1, 0.999).contains(0.8)).isTrue();
    assertThat(fit.timeRatioInterval(1, 0.999).width()).isLessThan(0.1);
    assertThat(fit.never().get(0)).isCloseTo(0.5, within(0.06));
    assertThat(fit.never().get(1)).isCloseTo(0.1, within(0.04));
    assertThat(model.test(treatments).value().orElseThrow().pValue()).isLessThan(1e-6);
  }

  @Test
  void treatments_alike_in_time_but_not_in_share_are_not_told_apart_by_time() {
    var random = new SplittableRandom(15);
    List<TreatmentTimes> treatments =
        List.of(
            new TreatmentTimes("none", Looks.logNormal(random, 400, LOCATION, SCALE, 0.6)),
            new TreatmentTimes("IBA", Looks.logNormal(random, 400, LOCATION, SCALE, 0.1)));
    var test = TimeModel.withNeverRooting(TimeShape.LOG_NORMAL).test(treatments);
    assertThat(test.value().orElseThrow().degreesOfFreedom()).isEqualTo(1);
    assertThat(test.value().orElseThrow().pValue()).isGreaterThan(0.01);
  }

  @Test
  void a_share_beyond_those_that_root_has_no_day() {
    TimeFit fit = cured(Looks.logNormal(new SplittableRandom(16), 600, LOCATION, SCALE, 0.4));
    assertThat(fit.dayOfAll(0, 0.8).lack()).contains("So large a share is not expected to root.");
    TimeFit.Day half = fit.dayOfAll(0, 0.5).value().orElseThrow();
    assertThat(fit.rootedBy(0, half.day())).isCloseTo(0.5, within(1e-10));
    assertThat(half.day()).isGreaterThan(fit.dayOfRooters(0, 0.5).day());
    assertThat(half.error()).isGreaterThan(fit.dayOfRooters(0, 0.5).error());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 0.9, 0.99})
  void the_share_by_its_day_is_the_share(double share) {
    for (TimeShape shape : TimeShape.values()) {
      TimeFit fit =
          TimeModel.of(shape)
              .fitOne(Looks.logNormal(new SplittableRandom(17), 100, LOCATION, SCALE, 0))
              .value()
              .orElseThrow();
      assertThat(fit.rootedBy(0, fit.dayOfRooters(0, share).day())).isCloseTo(share, within(1e-12));
      assertThat(shape.below(shape.quantile(share)) + shape.above(shape.quantile(share)))
          .isCloseTo(1, within(1e-14));
    }
  }

  @ParameterizedTest
  @EnumSource(TimeShape.class)
  void the_gradient_and_the_hessian_are_those_of_the_value(TimeShape shape) {
    var random = new SplittableRandom(18);
    var likelihood =
        new TimeLikelihood(
            shape,
            List.of(
                new TreatmentTimes("none", Looks.logNormal(random, 40, LOCATION, SCALE, 0.5)),
                new TreatmentTimes("IBA", Looks.logNormal(random, 40, LOCATION, SCALE, 0.2))),
            false,
            new boolean[] {true, true});
    double[] at = {3.1, 3.0, -1, -0.2, -1.5};
    var here = likelihood.at(at);
    for (int i = 0; i < at.length; i++) {
      double[] more = at.clone();
      double[] less = at.clone();
      more[i] += 1e-5;
      less[i] -= 1e-5;
      var up = likelihood.at(more);
      var down = likelihood.at(less);
      assertThat((up.value() - down.value()) / 2e-5).isCloseTo(here.gradient()[i], within(1e-5));
      for (int j = 0; j < at.length; j++) {
        assertThat((up.gradient()[j] - down.gradient()[j]) / 2e-5)
            .isCloseTo(here.hessian()[i][j], within(1e-4));
      }
    }
  }

  @Test
  void the_order_of_the_looks_changes_nothing() {
    List<RootedBetween> looks = Looks.logNormal(new SplittableRandom(19), 80, LOCATION, SCALE, 0.2);
    var reversed = new ArrayList<>(looks);
    Collections.reverse(reversed);
    assertThat(cured(reversed).locations().get(0))
        .isCloseTo(cured(looks).locations().get(0), within(1e-9));
  }

  @Test
  void looks_that_cannot_tell_are_named() {
    for (boolean never : new boolean[] {false, true}) {
      var model = new TimeModel(TimeShape.LOG_NORMAL, never);
      assertThat(model.fitOne(List.of()).lack()).contains("Nobody has looked.");
      assertThat(model.fit(List.of()).lack()).contains("Nobody has looked.");
      assertThat(model.fitOne(List.of(RootedBetween.notBy(42, 24))).lack())
          .contains("Nothing has rooted.");
      assertThat(model.fitOne(List.of(new RootedBetween(0, 14, 24))).lack())
          .contains("All had rooted at the first look.");
      assertThat(model.fitOne(List.of(new RootedBetween(14, 21, 24))).lack())
          .contains("All may have rooted on one day: the looks show no spread.");
      assertThat(
              model
                  .fitOne(List.of(new RootedBetween(14, 21, 9), new RootedBetween(18, 28, 9)))
                  .lack())
          .isPresent();
    }
  }

  @Test
  void one_treatment_is_no_comparison() {
    var one = new TreatmentTimes("IBA", List.of(new RootedBetween(14, 21, 24)));
    assertThat(TimeModel.of(TimeShape.WEIBULL).test(List.of(one)).lack()).isPresent();
    assertThatIllegalArgumentException().isThrownBy(() -> new TreatmentTimes("IBA", List.of()));
  }

  private static TimeFit cured(List<RootedBetween> looks) {
    return TimeModel.withNeverRooting(TimeShape.LOG_NORMAL).fitOne(looks).value().orElseThrow();
  }
}
