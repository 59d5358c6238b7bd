package trialwood.analysis.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RootingCurveTest {

  @Test
  void looks_on_common_days_give_the_plain_shares() {
    RootingCurve curve =
        curve(
            new RootedBetween(0, 14, 2),
            new RootedBetween(14, 21, 10),
            new RootedBetween(21, 28, 6),
            RootedBetween.notBy(28, 6));
    assertThat(curve.rootedBy(14)).isCloseTo(2.0 / 24, within(1e-12));
    assertThat(curve.rootedBy(21)).isCloseTo(0.5, within(1e-12));
    assertThat(curve.notRootedAfter(28)).isCloseTo(0.25, within(1e-12));
    assertThat(curve.dayOf(0.5)).isEqualTo(new RootingCurve.Day(14, 21));
    assertThat(curve.dayOf(0.8).reached()).isFalse();
    assertThat(curve.cuttings()).isEqualTo(24);
  }

  @Test
  void a_small_example_worked_by_hand() {
    // (0, 2], (1, 3], (2, 4]: innermost (1, 2] and (2, 3]; p(1−p)… by hand: likelihood p · 1 ·
    // (1−p)
    RootingCurve curve =
        curve(new RootedBetween(0, 2, 1), new RootedBetween(1, 3, 1), new RootedBetween(2, 4, 1));
    assertThat(curve.masses()).hasSize(2);
    assertThat(curve.masses().get(0).share()).isCloseTo(0.5, within(1e-9));
    assertThat(curve.masses().get(1)).extracting("after", "by").containsExactly(2.0, 3.0);
    assertThat(curve.logLikelihood()).isCloseTo(2 * Math.log(0.5), within(1e-12));
  }

  @RepeatedTest(100)
  void no_other_curve_is_more_likely(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    RootingCurve curve = RootingCurve.of(Looks.drawn(random)).value().orElseThrow();
    assertThat(curve.shortfall()).isLessThanOrEqualTo(1e-10);
    assertThat(curve.masses().stream().mapToDouble(RootingCurve.Mass::share).sum())
        .isCloseTo(1, within(1e-12));
  }

  @RepeatedTest(30)
  void the_order_of_the_looks_changes_nothing(RepetitionInfo repetition) {
    var random = new SplittableRandom(repetition.getCurrentRepetition());
    List<RootedBetween> looks = Looks.drawn(random);
    var shuffled = new ArrayList<>(looks);
    Collections.shuffle(shuffled, new Random(repetition.getCurrentRepetition()));
    RootingCurve one = RootingCurve.of(looks).value().orElseThrow();
    RootingCurve other = RootingCurve.of(shuffled).value().orElseThrow();
    assertThat(other.logLikelihood()).isCloseTo(one.logLikelihood(), within(1e-8));
  }

  @Test
  void ten_alike_count_as_one_line_of_ten() {
    var apart = new ArrayList<>(Collections.nCopies(10, new RootedBetween(14, 21, 1)));
    apart.add(RootedBetween.notBy(21, 1));
    RootingCurve together = curve(new RootedBetween(14, 21, 10), RootedBetween.notBy(21, 1));
    assertThat(RootingCurve.of(apart).value().orElseThrow().logLikelihood())
        .isCloseTo(together.logLikelihood(), within(1e-10));
  }

  @Test
  void none_rooted_is_a_curve_that_never_starts() {
    RootingCurve curve = curve(RootedBetween.notBy(42, 24));
    assertThat(curve.rootedBy(42)).isZero();
    assertThat(curve.dayOf(0.1).reached()).isFalse();
  }

  @Test
  void nobody_looked() {
    assertThat(RootingCurve.of(List.of()).lack()).contains("Nobody has looked.");
  }

  @ParameterizedTest
  @CsvSource({"-1,5,1", "5,5,1", "5,4,1", "NaN,5,1", "5,NaN,1", "Infinity,Infinity,1", "0,5,0"})
  void an_impossible_interval_is_refused(double after, double by, int cuttings) {
    assertThatIllegalArgumentException().isThrownBy(() -> new RootedBetween(after, by, cuttings));
  }

  @Test
  void a_share_outside_0_to_1_is_refused() {
    RootingCurve curve = curve(RootedBetween.notBy(42, 24));
    assertThatIllegalArgumentException().isThrownBy(() -> curve.dayOf(0));
    assertThatIllegalArgumentException().isThrownBy(() -> curve.dayOf(1.1));
  }

  private static RootingCurve curve(RootedBetween... looks) {
    return RootingCurve.of(List.of(looks)).value().orElseThrow();
  }
}
