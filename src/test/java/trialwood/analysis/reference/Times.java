package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Interval;
import trialwood.analysis.time.KaplanMeier;
import trialwood.analysis.time.KnownTime;
import trialwood.analysis.time.LogRank;
import trialwood.analysis.time.RootedBetween;
import trialwood.analysis.time.RootingCurve;
import trialwood.analysis.time.TimeFit;
import trialwood.analysis.time.TimeModel;
import trialwood.analysis.time.TimeShape;
import trialwood.analysis.time.TreatmentTimes;

/** Time to an event: 04. */
final class Times implements Family {

  /** Fits of one line of inputs, made once. */
  private final Map<String, Object> fits = new HashMap<>();

  private interface Quantity<T> {
    Object of(Row row, T answer);
  }

  @Override
  public Map<String, Function<Row, Object>> methods() {
    var methods = new HashMap<String, Function<Row, Object>>();
    for (String shape : List.of("lognormal", "weibull", "loglogistic")) {
      methods.put("survreg." + shape, row -> part(row, fit(row), this::plain));
      methods.put("survreg_reg." + shape, this::regression);
    }
    methods.put("turnbull", row -> part(row, curve(row), this::turnbull));
    methods.put("km", row -> part(row, kaplanMeier(row), this::kaplanMeier));
    methods.put("km_quantile", row -> part(row, kaplanMeier(row), this::quantile));
    methods.put("logrank", row -> part(row, logRank(row), this::logRank));
    return methods;
  }

  // looks

  private static List<RootedBetween> looks(Row row, IntPredicate asked) {
    double[] left = row.data().numbers(row.input("left"));
    double[] right = row.data().numbers(row.input("right"));
    double[] weight = row.has("weight") ? row.data().numbers(row.input("weight")) : null;
    var looks = new ArrayList<RootedBetween>();
    for (int i = 0; i < left.length; i++) {
      boolean isMissing = Double.isNaN(left[i]) && Double.isNaN(right[i]);
      int cuttings = weight == null ? 1 : (int) weight[i];
      if (asked.test(i) && !isMissing && cuttings > 0) {
        looks.add(
            new RootedBetween(
                Double.isNaN(left[i]) ? 0 : left[i],
                Double.isNaN(right[i]) ? Double.POSITIVE_INFINITY : right[i],
                cuttings));
      }
    }
    return looks;
  }

  /** Which lines of the data belong to the row's subset, written {@code column:level}. */
  private static IntPredicate subset(Row row) {
    if (!row.has("subset")) {
      return line -> true;
    }
    String[] parts = row.input("subset").split(":", 2);
    return at(row, parts[0], parts[1]);
  }

  private static IntPredicate at(Row row, String column, String level) {
    List<String> levels = row.data().text(column);
    return line -> levels.get(line).equals(level);
  }

  /** The levels of the row's factor, the baseline first if there is one. */
  private static List<String> levels(Row row) {
    var levels =
        new ArrayList<>(
            row.data().text(row.input("factor")).stream()
                .filter(level -> !level.isEmpty())
                .distinct()
                .sorted()
                .toList());
    if (row.has("baseline") && levels.remove(row.input("baseline"))) {
      levels.add(0, row.input("baseline"));
    }
    return levels;
  }

  private Answer<RootingCurve> curve(Row row) {
    return once("curve " + row.given(), () -> RootingCurve.of(looks(row, subset(row))));
  }

  private Object turnbull(Row row, RootingCurve curve) {
    return switch (row.quantity()) {
      case "mass" -> mass(row, curve);
      case "survival_after" -> curve.notRootedAfter(row.keyNumber());
      case "loglik" -> curve.logLikelihood();
      case "median_interval_left" -> curve.dayOf(0.5).after();
      case "median_interval_right" -> curve.dayOf(0.5).by();
      default -> throw new UnknownRow(row);
    };
  }

  /** The mass of the interval that a key such as {@code (14;21]} names. */
  private static double mass(Row row, RootingCurve curve) {
    String[] ends = row.key().substring(1, row.key().length() - 1).split(";");
    double after = Double.parseDouble(ends[0]);
    double by = ends[1].equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(ends[1]);
    return curve.masses().stream()
        .filter(mass -> mass.after() == after && mass.by() == by)
        .mapToDouble(RootingCurve.Mass::share)
        .sum();
  }

  private static TimeModel model(Row row) {
    return TimeModel.of(
        switch (row.input("dist").toLowerCase(Locale.ROOT)) {
          case "lognormal" -> TimeShape.LOG_NORMAL;
          case "weibull" -> TimeShape.WEIBULL;
          case "loglogistic" -> TimeShape.LOG_LOGISTIC;
          default -> throw new UnknownRow(row);
        });
  }

  private Answer<TimeFit> fit(Row row) {
    return once("fit " + row.given(), () -> model(row).fitOne(looks(row, subset(row))));
  }

  private Object plain(Row row, TimeFit fit) {
    return switch (row.quantity()) {
      case "intercept" -> fit.coefficient(0);
      case "intercept_se" -> fit.coefficientError(0);
      case "log_scale" -> fit.logScale();
      case "log_scale_se" -> fit.logScaleError();
      case "cov_intercept_logscale" -> fit.locationScaleCovariance(0);
      case "scale" -> fit.scale();
      case "loglik" -> fit.logLikelihood();
      case "aic" -> fit.aic();
      case "weibull_shape" -> 1 / fit.scale();
      case "weibull_scale" -> Math.exp(fit.coefficient(0));
      default -> day(row, fit.dayOfRooters(0, row.keyNumber()));
    };
  }

  private static Object day(Row row, TimeFit.Day day) {
    return switch (row.quantity()) {
      case "quantile" -> day.day();
      case "quantile_se" -> day.error();
      case "log_quantile_se" -> day.logError();
      case "quantile_lower95" -> day.interval(0.95).low();
      case "quantile_upper95" -> day.interval(0.95).high();
      default -> throw new UnknownRow(row);
    };
  }

  private static List<TreatmentTimes> treatments(Row row) {
    IntPredicate subset = subset(row);
    return levels(row).stream()
        .map(
            level ->
                new TreatmentTimes(
                    level, looks(row, subset.and(at(row, row.input("factor"), level)))))
        .toList();
  }

  private Object regression(Row row) {
    if (row.quantity().startsWith("lrt_")) {
      Answer<ChiSquareTest> test =
          once("test " + row.given(), () -> model(row).test(treatments(row)));
      return part(row, test, Times::test);
    }
    return part(
        row, once("fit " + row.given(), () -> model(row).fit(treatments(row))), this::regression);
  }

  private Object regression(Row row, TimeFit fit) {
    String level = row.key().split(":p=", 2)[0];
    int at = level.equals("(Intercept)") ? 0 : fit.treatments().indexOf(level);
    return switch (row.quantity()) {
      case "coef" -> fit.coefficient(at);
      case "se" -> fit.coefficientError(at);
      case "log_scale" -> fit.logScale();
      case "scale" -> fit.scale();
      case "loglik" -> fit.logLikelihood();
      case "aic" -> fit.aic();
      case "time_ratio" -> fit.timeRatio(at);
      default -> day(row, fit.dayOfRooters(at, row.keyNumber()));
    };
  }

  private static Object test(Row row, ChiSquareTest test) {
    return switch (row.quantity()) {
      case "lrt_chisq", "chisq" -> test.statistic();
      case "lrt_df", "df" -> test.degreesOfFreedom();
      case "lrt_p", "p" -> test.pValue();
      default -> throw new UnknownRow(row);
    };
  }

  // known days

  private static List<KnownTime> times(Row row, IntPredicate asked) {
    double[] time = row.data().numbers(row.input("time"));
    double[] status = row.data().numbers(row.input("status"));
    return IntStream.range(0, time.length)
        .filter(i -> asked.test(i) && !Double.isNaN(time[i]) && !Double.isNaN(status[i]))
        .mapToObj(i -> new KnownTime(time[i], status[i] == 1))
        .toList();
  }

  private Answer<KaplanMeier> kaplanMeier(Row row) {
    return once("km " + row.given(), () -> KaplanMeier.of(times(row, subset(row))));
  }

  private Object kaplanMeier(Row row, KaplanMeier curve) {
    return switch (row.quantity()) {
      case "n" -> curve.n();
      case "events" -> curve.events();
      default -> step(row, curve.at(row.keyNumber()).orElseThrow());
    };
  }

  private Object step(Row row, KaplanMeier.Step step) {
    return switch (row.quantity()) {
      case "n_risk" -> step.atRisk();
      case "n_event" -> step.events();
      case "survival" -> step.survival();
      case "greenwood_se" -> step.error().value().orElse(Double.NaN);
      case "lower" -> part(row, interval(row, step), (r, interval) -> interval.low());
      case "upper" -> part(row, interval(row, step), (r, interval) -> interval.high());
      default -> throw new UnknownRow(row);
    };
  }

  private static Answer<Interval> interval(Row row, KaplanMeier.Step step) {
    return step.interval(row.number("conf"), scale(row));
  }

  private static KaplanMeier.Scale scale(Row row) {
    return switch (row.input("conf_type")) {
      case "plain" -> KaplanMeier.Scale.PLAIN;
      case "log" -> KaplanMeier.Scale.LOG;
      case "log-log" -> KaplanMeier.Scale.LOG_LOG;
      default -> throw new UnknownRow(row);
    };
  }

  private Object quantile(Row row, KaplanMeier curve) {
    KaplanMeier.Day day = curve.dayOf(row.keyNumber(), row.number("conf"), scale(row));
    return switch (row.quantity()) {
      case "time" -> orNone(day.day());
      case "lower" -> orNone(day.low());
      case "upper" -> orNone(day.high());
      default -> throw new UnknownRow(row);
    };
  }

  private static double orNone(Optional<Double> day) {
    return day.orElse(Double.NaN);
  }

  private Answer<LogRank> logRank(Row row) {
    return once(
        "logrank " + row.given(),
        () -> {
          var groups = new TreeMap<String, List<KnownTime>>();
          IntPredicate subset = subset(row);
          for (String level : levels(row)) {
            groups.put(level, times(row, subset.and(at(row, row.input("factor"), level))));
          }
          return LogRank.of(groups, row.number("rho"));
        });
  }

  private Object logRank(Row row, LogRank test) {
    int at = Math.max(0, test.groups().indexOf(row.key()));
    return switch (row.quantity()) {
      case "observed" -> test.observed().get(at);
      case "expected" -> test.expected().get(at);
      case "variance" -> test.covariance().between(at, at);
      default -> test(row, test.test());
    };
  }

  // answers

  /** A part of an answer, NaN where it is lacking. */
  private static <T> Object part(Row row, Answer<T> answer, Quantity<T> quantity) {
    return answer instanceof Answer.Known<T> known ? quantity.of(row, known.answer()) : Double.NaN;
  }

  @SuppressWarnings("unchecked")
  private <T> T once(String key, Supplier<T> fit) {
    if (!fits.containsKey(key)) {
      fits.put(key, fit.get());
    }
    return (T) fits.get(key);
  }
}
