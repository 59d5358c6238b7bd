package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * The share still without the event after each day, S(t) = Π (1 − d/n) over the days up to t, where
 * the days are known and some plants are lost from sight.
 *
 * <p>Greenwood's standard error is S √(Σ d/(n(n − d))); it is undefined once S is 0.
 *
 * <p>Source: Kaplan, E. L. and Meier, P. (1958) Nonparametric estimation from incomplete
 * observations. Journal of the American Statistical Association 53, 457–481; Greenwood, M. (1926)
 * Reports on Public Health and Medical Subjects 33
 *
 * @param n plants
 * @param events of them had the event
 * @param lastDay on which any plant was seen
 * @param steps one for every day with an event, in order
 */
public record KaplanMeier(int n, int events, double lastDay, List<Step> steps) {

  /** Shares closer than this are equal. */
  private static final double SAME = 1.5e-8;

  /** On which scale a normal interval of S is laid. */
  public enum Scale {
    PLAIN,
    LOG,
    LOG_LOG
  }

  /**
   * One day with events.
   *
   * @param day its number
   * @param atRisk n, plants seen without the event just before
   * @param events d, on that day
   * @param survival S after it
   * @param hazardVariance Σ d/(n(n − d)) up to that day; infinite once S is 0
   */
  public record Step(double day, int atRisk, int events, double survival, double hazardVariance) {

    /** Greenwood's; lacking once S is 0. */
    public Answer<Double> error() {
      return survival > 0
          ? Answer.known(survival * Math.sqrt(hazardVariance))
          : Answer.lacking("None is left: the curve has no standard error there.");
    }

    /** An interval of S, cut to 0 … 1; lacking once S is 0. */
    public Answer<Interval> interval(double level, Scale scale) {
      Refuse.unlessInside(level, "level of an interval");
      if (survival == 0) {
        return Answer.lacking("None is left: the curve has no interval there.");
      }
      double half =
          Quantile.of(NormalDistribution.of(0, 1), (1 + level) / 2) * Math.sqrt(hazardVariance);
      double log = Math.log(survival);
      return Answer.known(
          switch (scale) {
            case PLAIN -> cut(survival * (1 - half), survival * (1 + half), level);
            case LOG -> cut(Math.exp(log - half), Math.exp(log + half), level);
            case LOG_LOG ->
                log == 0
                    ? new Interval(1, 1, level)
                    : cut(
                        Math.exp(log * Math.exp(-half / log)),
                        Math.exp(log * Math.exp(half / log)),
                        level);
          });
    }

    private static Interval cut(double low, double high, double level) {
      return new Interval(Math.max(0, low), Math.min(1, high), level);
    }
  }

  /**
   * The day by which a share had the event.
   *
   * @param day itself; empty if the curve never came down so far
   * @param low day at which the lower limit of S came down to it; empty if it never did
   * @param high day at which the upper limit did; empty if it never did
   */
  public record Day(Optional<Double> day, Optional<Double> low, Optional<Double> high) {}

  /** Lacking for no plants. */
  public static Answer<KaplanMeier> of(List<KnownTime> times) {
    if (times.isEmpty()) {
      return Answer.lacking("No plant has been followed.");
    }
    var days = new TreeMap<Double, int[]>();
    for (KnownTime time : times) {
      int[] counts = days.computeIfAbsent(time.day(), day -> new int[2]);
      counts[0]++;
      counts[1] += time.happened() ? 1 : 0;
    }
    var steps = new ArrayList<Step>();
    int atRisk = times.size();
    int events = 0;
    double survival = 1;
    double variance = 0;
    for (Map.Entry<Double, int[]> day : days.entrySet()) {
      int d = day.getValue()[1];
      if (d > 0) {
        survival *= (double) (atRisk - d) / atRisk;
        variance += (double) d / atRisk / (atRisk - d);
        steps.add(new Step(day.getKey(), atRisk, d, survival, variance));
        events += d;
      }
      atRisk -= day.getValue()[0];
    }
    return Answer.known(new KaplanMeier(times.size(), events, days.lastKey(), List.copyOf(steps)));
  }

  /** The step on or before a day; empty before the first event. */
  public Optional<Step> at(double day) {
    Refuse.unless(!Double.isNaN(day), "The day must be a number.");
    return steps.stream().filter(step -> step.day() <= day).reduce((a, b) -> b);
  }

  /**
   * The smallest day with S ≤ 1 − share; where S equals 1 − share over a flat stretch, the middle
   * of it. The limits' days are read off the limits' curves in the same way.
   *
   * @param share that had the event, 0 &lt; share &lt; 1
   */
  public Day dayOf(double share, double level, Scale scale) {
    Refuse.unlessInside(share, "share");
    return new Day(
        reached(curve(Step::survival), 1 - share),
        reached(curve(step -> limit(step, level, scale, true)), 1 - share),
        reached(curve(step -> limit(step, level, scale, false)), 1 - share));
  }

  private static double limit(Step step, double level, Scale scale, boolean low) {
    return step.interval(level, scale) instanceof Answer.Known<Interval> known
        ? low ? known.answer().low() : known.answer().high()
        : Double.POSITIVE_INFINITY;
  }

  /** Values by day; those without a value (infinite) are left out. */
  private NavigableMap<Double, Double> curve(ToDoubleFunction<Step> value) {
    var curve = new TreeMap<Double, Double>();
    for (Step step : steps) {
      double found = value.applyAsDouble(step);
      if (Double.isFinite(found)) {
        curve.put(step.day(), found);
      }
    }
    return curve;
  }

  private Optional<Double> reached(NavigableMap<Double, Double> curve, double line) {
    Optional<Double> first = firstBelow(curve, line + SAME);
    if (first.isEmpty() || curve.get(first.get()) < line - SAME) {
      return first;
    }
    double flatUntil = firstBelow(curve, line - SAME).orElse(lastDay);
    return Optional.of((first.get() + flatUntil) / 2);
  }

  /**
   * The day with the highest value below the line: the first below it, unless the curve rises
   * again, as an upper limit on the log scale may.
   */
  private static Optional<Double> firstBelow(NavigableMap<Double, Double> curve, double line) {
    return curve.entrySet().stream()
        .filter(entry -> entry.getValue() < line)
        .reduce((highest, next) -> next.getValue() > highest.getValue() ? next : highest)
        .map(Map.Entry::getKey);
  }
}
