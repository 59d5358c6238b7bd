package trialwood.analysis.reference;

import static trialwood.analysis.reference.Fits.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntPredicate;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.time.RootedBetween;
import trialwood.analysis.time.RootingCurve;
import trialwood.analysis.time.TimeFit;
import trialwood.analysis.time.TimeModel;
import trialwood.analysis.time.TimeShape;
import trialwood.analysis.time.TreatmentTimes;

/** Times known from looks: the intervals of 04. */
final class Times implements Family {

  private final Fits fits = new Fits();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    var methods = new HashMap<String, Function<Row, Object>>();
    for (String shape : List.of("lognormal", "weibull", "loglogistic")) {
      methods.put("survreg." + shape, row -> part(row, fit(row), this::plain));
      methods.put("survreg_reg." + shape, this::regression);
    }
    methods.put("turnbull", row -> part(row, curve(row), this::turnbull));
    return methods;
  }

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

  private Answer<RootingCurve> curve(Row row) {
    return fits.once("curve " + row.given(), () -> RootingCurve.of(looks(row, Subset.of(row))));
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
    return fits.once("fit " + row.given(), () -> model(row).fitOne(looks(row, Subset.of(row))));
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
    IntPredicate subset = Subset.of(row);
    return Subset.levels(row).stream()
        .map(
            level ->
                new TreatmentTimes(
                    level, looks(row, subset.and(Subset.at(row, row.input("factor"), level)))))
        .toList();
  }

  private Object regression(Row row) {
    if (row.quantity().startsWith("lrt_")) {
      Answer<ChiSquareTest> test =
          fits.once("test " + row.given(), () -> model(row).test(treatments(row)));
      return part(row, test, Times::test);
    }
    return part(
        row,
        fits.once("fit " + row.given(), () -> model(row).fit(treatments(row))),
        this::regression);
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

  static Object test(Row row, ChiSquareTest test) {
    return switch (row.quantity()) {
      case "lrt_chisq", "chisq" -> test.statistic();
      case "lrt_df", "df" -> test.degreesOfFreedom();
      case "lrt_p", "p" -> test.pValue();
      default -> throw new UnknownRow(row);
    };
  }
}
