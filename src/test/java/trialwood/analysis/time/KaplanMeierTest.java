package trialwood.analysis.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trialwood.analysis.time.KaplanMeier.Scale;

class KaplanMeierTest {

  @Test
  void with_every_day_known_the_curve_is_the_share_and_its_error_the_binomial() {
    KaplanMeier curve = curve(known(10, 12, 15, 20));
    KaplanMeier.Step step = curve.at(12).orElseThrow();
    assertThat(step.survival()).isCloseTo(0.5, within(1e-15));
    assertThat(step.error().value().orElseThrow())
        .isCloseTo(Math.sqrt(0.25 / 4), within(1e-15)); // √(p(1 − p)/n)
    assertThat(curve.at(9)).isEmpty();
  }

  @Test
  void once_none_is_left_there_is_no_error() {
    KaplanMeier.Step last = curve(known(10, 12)).at(12).orElseThrow();
    assertThat(last.survival()).isZero();
    assertThat(last.error().lack()).isPresent();
    assertThat(last.interval(0.95, Scale.LOG).lack()).isPresent();
  }

  @ParameterizedTest
  @EnumSource(Scale.class)
  void every_interval_holds_the_curve_and_stays_inside_0_to_1(Scale scale) {
    KaplanMeier curve = curve(known(3, 5, 8, 9, 12, 20, 21, 30));
    for (KaplanMeier.Step step : curve.steps()) {
      step.interval(0.95, scale)
          .value()
          .ifPresent(
              interval -> {
                assertThat(interval.contains(step.survival())).isTrue();
                assertThat(interval.low()).isNotNegative();
                assertThat(interval.high()).isLessThanOrEqualTo(1);
              });
    }
  }

  @Test
  void a_flat_stretch_at_one_half_is_halved() {
    assertThat(curve(known(10, 12, 16, 20)).dayOf(0.5, 0.95, Scale.LOG).day()).contains(14.0);
  }

  @Test
  void a_share_never_reached_has_no_day() {
    var times = new ArrayList<>(known(10));
    times.add(new KnownTime(30, false));
    times.add(new KnownTime(30, false));
    assertThat(curve(times).dayOf(0.5, 0.95, Scale.LOG).day()).isEqualTo(Optional.empty());
    assertThat(curve(List.of(new KnownTime(5, false))).steps()).isEmpty();
  }

  @Test
  void no_plants_no_curve() {
    assertThat(KaplanMeier.of(List.of()).lack()).contains("No plant has been followed.");
    assertThatIllegalArgumentException().isThrownBy(() -> new KnownTime(-1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new KnownTime(Double.NaN, true));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> curve(known(10, 12)).dayOf(0, 0.95, Scale.LOG));
  }

  @Test
  void three_groups_are_compared_alike_in_any_order() {
    var random = new SplittableRandom(31);
    var groups = new LinkedHashMap<String, List<KnownTime>>();
    var turned = new LinkedHashMap<String, List<KnownTime>>();
    for (String name : List.of("A", "B", "C")) {
      var times = new ArrayList<KnownTime>();
      for (int i = 0; i < 12; i++) {
        times.add(new KnownTime(random.nextInt(1, 25), random.nextDouble() < 0.7));
      }
      groups.put(name, times);
    }
    for (String name : List.of("C", "A", "B")) {
      turned.put(name, groups.get(name));
    }
    for (double rho : new double[] {0, 1, 0.5}) {
      LogRank test = LogRank.of(groups, rho).value().orElseThrow();
      assertThat(test.test().degreesOfFreedom()).isEqualTo(2);
      assertThat(LogRank.of(turned, rho).value().orElseThrow().test().statistic())
          .isCloseTo(test.test().statistic(), within(1e-10));
      assertThat(test.observed().stream().mapToDouble(x -> x).sum())
          .isCloseTo(test.expected().stream().mapToDouble(x -> x).sum(), within(1e-10));
    }
  }

  @Test
  void groups_that_cannot_be_compared_are_named() {
    assertThat(LogRank.of(Map.of("A", known(3, 4)), 0).lack())
        .contains("A comparison needs at least two groups.");
    List<KnownTime> lost = List.of(new KnownTime(3, false));
    assertThat(LogRank.of(Map.of("A", lost, "B", lost), 0).lack())
        .contains("There has been no event.");
    assertThat(LogRank.of(Map.of("A", lost, "B", known(9, 10)), 0).lack())
        .contains("A group was never at risk beside the others.");
    assertThat(LogRank.of(Map.of("A", List.<KnownTime>of(), "B", known(9, 10)), 0).lack())
        .isPresent();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LogRank.of(Map.of("A", known(3), "B", known(4)), -1));
  }

  private static KaplanMeier curve(List<KnownTime> times) {
    return KaplanMeier.of(times).value().orElseThrow();
  }

  private static List<KnownTime> known(double... days) {
    var times = new ArrayList<KnownTime>();
    for (double day : days) {
      times.add(new KnownTime(day, true));
    }
    return times;
  }
}
