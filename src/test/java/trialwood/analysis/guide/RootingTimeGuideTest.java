package trialwood.analysis.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Interval;
import trialwood.analysis.time.KaplanMeier;
import trialwood.analysis.time.KnownTime;
import trialwood.analysis.time.RootedBetween;
import trialwood.analysis.time.RootingCurve;
import trialwood.analysis.time.RootingLook;
import trialwood.analysis.time.RootingTime;
import trialwood.analysis.time.TimeFit;
import trialwood.analysis.time.TimeModel;
import trialwood.analysis.time.TimeShape;

/** Time to root. */
class RootingTimeGuideTest {

  private static final Guide GUIDE = Guide.read();

  private static final List<RootedBetween> TWO_TRAYS =
      List.of(
          new RootedBetween(0, 14, 1),
          new RootedBetween(14, 21, 11),
          new RootedBetween(21, 28, 7),
          RootedBetween.notBy(28, 5),
          new RootedBetween(0, 18, 5),
          new RootedBetween(18, 24, 11),
          new RootedBetween(24, 32, 4),
          RootedBetween.notBy(32, 4));

  @Test
  void days_to_root() {
    List<RootingLook> looks =
        List.of(
            new RootingLook(14, 6, 0),
            new RootingLook(18, 6, 1),
            new RootingLook(21, 6, 3),
            new RootingLook(24, 6, 5));
    var half = (RootingTime.Reached) RootingTime.ofHalf(looks);
    var most = (RootingTime.Reached) RootingTime.of(looks, 0.8);
    GUIDE.states(
        "Of 6 lifted each time, 0, 1, 3, 5 rooted on days 14, 18, 21, 24: half had rooted in"
            + " (%d, %d], 80 %% in (%d, %d].",
        half.after(), half.by(), most.after(), most.by());
  }

  @Test
  void curve_of_rooting() {
    RootingCurve curve = RootingCurve.of(TWO_TRAYS).value().orElseThrow();
    GUIDE.states(
        "Half had rooted in (%.0f, %.0f], 80 %% in (%.0f, %.0f]; 90 %% was not reached by day %.0f.",
        curve.dayOf(0.5).after(),
        curve.dayOf(0.5).by(),
        curve.dayOf(0.8).after(),
        curve.dayOf(0.8).by(),
        curve.dayOf(0.9).after());
    assertThat(curve.dayOf(0.9).reached()).isFalse();
  }

  @Test
  void days_to_root_with_a_shape() {
    TimeFit fit =
        TimeModel.withNeverRooting(TimeShape.LOG_NORMAL).fitOne(TWO_TRAYS).value().orElseThrow();
    TimeFit plain = TimeModel.of(TimeShape.LOG_NORMAL).fitOne(TWO_TRAYS).value().orElseThrow();
    TimeFit.Day half = fit.dayOfRooters(0, 0.5);
    GUIDE.states(
        "log-normal: %.0f %% never root; half of the rooters by day %.1f, 95 %% interval %.1f to"
            + " %.1f; half of all stuck by day %.1f. AIC %.1f, without a never-root share %.1f.",
        100 * fit.never().get(0),
        half.day(),
        half.interval(0.95).low(),
        half.interval(0.95).high(),
        fit.dayOfAll(0, 0.5).value().orElseThrow().day(),
        fit.aic(),
        plain.aic());
  }

  @Test
  void known_days() {
    List<KnownTime> plants =
        List.of(
            new KnownTime(12, true),
            new KnownTime(15, true),
            new KnownTime(15, true),
            new KnownTime(20, true),
            new KnownTime(26, true),
            new KnownTime(18, false),
            new KnownTime(24, false),
            new KnownTime(30, false));
    KaplanMeier curve = KaplanMeier.of(plants).value().orElseThrow();
    KaplanMeier.Step step = curve.at(20).orElseThrow();
    KaplanMeier.Day half = curve.dayOf(0.5, 0.95, KaplanMeier.Scale.LOG_LOG);
    Interval interval = step.interval(0.95, KaplanMeier.Scale.LOG_LOG).value().orElseThrow();
    GUIDE.states(
        "after day 20 a share of %.2f is still without, 95 %% interval %.2f to %.2f; half had it by"
            + " day %.0f, at the earliest day %.0f, at the latest not known.",
        step.survival(),
        interval.low(),
        interval.high(),
        half.day().orElseThrow(),
        half.low().orElseThrow());
    assertThat(half.high()).isEmpty();
  }
}
