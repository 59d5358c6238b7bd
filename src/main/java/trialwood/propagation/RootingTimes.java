package trialwood.propagation;

import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.time.RootedBetween;
import trialwood.analysis.time.RootingCurve;
import trialwood.analysis.time.TimeFit;
import trialwood.analysis.time.TimeModel;
import trialwood.analysis.time.TimeShape;
import trialwood.analysis.time.TrayResample;

/**
 * When the cuttings of one accession in one run had rooted, of all that were stuck.
 *
 * @param curve by Turnbull's estimator from all looks and final counts
 * @param trays that were looked at
 * @param looks at them, without final counts
 * @param lastDay the last day on which anybody counted
 */
public record RootingTimes(
    RootingCurve curve, List<List<RootedBetween>> trays, int looks, int lastDay) {

  private static final int STEPS = 10_000;

  static Optional<RootingTimes> of(List<LookSample> looks, List<TrayOutcome> closed) {
    List<List<RootedBetween>> trays =
        TrayInTime.of(looks, closed).stream().map(TrayInTime::seen).toList();
    List<RootedBetween> all = TrayInTime.pooled(trays.stream().flatMap(List::stream).toList());
    return RootingCurve.of(all)
        .value()
        .map(curve -> new RootingTimes(curve, trays, looks.size(), lastDay(all)));
  }

  /** The bracket by which half of all stuck had rooted. */
  public RootingCurve.Day half() {
    return curve.dayOf(0.5);
  }

  /** "day 18 to 21", or that half was not reached. */
  public String halfInWords() {
    return half().reached()
        ? "day %.0f to %.0f".formatted(half().after(), half().by())
        : "not reached by day " + lastDay;
  }

  /**
   * A smooth law of the days with a fraction that never roots: the most likely of three shapes.
   *
   * @param half day by which half of those that root had rooted
   * @param never share of the stuck that never roots
   */
  public record Smooth(
      TimeFit fit,
      double half,
      Answer<TrayResample> halfByTrays,
      Answer<TrayResample> neverByTrays) {

    public double never() {
      return fit.never().get(0);
    }

    /** As words on a page. */
    public String shape() {
      return switch (fit.shape()) {
        case LOG_NORMAL -> "log-normal";
        case WEIBULL -> "Weibull";
        case LOG_LOGISTIC -> "log-logistic";
      };
    }
  }

  /** Fits the law to the steps of the curve; errors come from trays drawn again. */
  public Answer<Smooth> smooth() {
    List<RootedBetween> steps = steps(curve);
    Optional<TimeFit> best = Optional.empty();
    Answer<TimeFit> last = Answer.lacking("Nobody has looked.");
    for (TimeShape shape : TimeShape.values()) {
      last = TimeModel.withNeverRooting(shape).fitOne(steps);
      Optional<TimeFit> found = last.value();
      if (found.isPresent()
          && best.stream().noneMatch(it -> it.logLikelihood() >= found.get().logLikelihood())) {
        best = found;
      }
    }
    if (best.isEmpty()) {
      return Answer.lacking(last.lack().orElse("The fit did not settle."));
    }
    TimeFit fit = best.get();
    return Answer.known(
        new Smooth(
            fit,
            half(fit),
            byTrays(fit.shape(), RootingTimes::half),
            byTrays(fit.shape(), again -> again.never().get(0))));
  }

  private Answer<TrayResample> byTrays(TimeShape shape, Function<TimeFit, Double> estimate) {
    var model = TimeModel.withNeverRooting(shape);
    var known = new HashMap<List<RootedBetween>, Optional<Double>>();
    return TrayResample.of(
        trays,
        drawn ->
            known.computeIfAbsent(
                TrayInTime.pooled(drawn),
                seen ->
                    RootingCurve.of(seen)
                        .value()
                        .flatMap(again -> model.fitOne(steps(again)).value())
                        .map(estimate)));
  }

  /** The steps as so many cuttings, never-rooters last. */
  private static List<RootedBetween> steps(RootingCurve curve) {
    return curve.masses().stream()
        .filter(mass -> Math.round(mass.share() * STEPS) > 0)
        .map(
            mass ->
                new RootedBetween(mass.after(), mass.by(), (int) Math.round(mass.share() * STEPS)))
        .toList();
  }

  private static double half(TimeFit fit) {
    return fit.dayOfRooters(0, 0.5).day();
  }

  private static int lastDay(List<RootedBetween> all) {
    return (int)
        all.stream().mapToDouble(one -> one.rooted() ? one.by() : one.after()).max().orElse(0);
  }
}
