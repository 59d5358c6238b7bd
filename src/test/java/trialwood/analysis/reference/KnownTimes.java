package trialwood.analysis.reference;

import static trialwood.analysis.reference.Fits.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.time.KaplanMeier;
import trialwood.analysis.time.KnownTime;
import trialwood.analysis.time.LogRank;

/** Times known to the day: the rest of 04. */
final class KnownTimes implements Family {

  private final Fits fits = new Fits();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "km", row -> part(row, kaplanMeier(row), this::kaplanMeier),
        "km_quantile", row -> part(row, kaplanMeier(row), this::quantile),
        "logrank", row -> part(row, logRank(row), this::logRank));
  }

  private static List<KnownTime> times(Row row, IntPredicate asked) {
    double[] time = row.data().numbers(row.input("time"));
    double[] status = row.data().numbers(row.input("status"));
    return IntStream.range(0, time.length)
        .filter(i -> asked.test(i) && !Double.isNaN(time[i]) && !Double.isNaN(status[i]))
        .mapToObj(i -> new KnownTime(time[i], status[i] == 1))
        .toList();
  }

  private Answer<KaplanMeier> kaplanMeier(Row row) {
    return fits.once("km " + row.given(), () -> KaplanMeier.of(times(row, Subset.of(row))));
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
    return fits.once(
        "logrank " + row.given(),
        () -> {
          var groups = new TreeMap<String, List<KnownTime>>();
          IntPredicate subset = Subset.of(row);
          for (String level : Subset.levels(row)) {
            groups.put(level, times(row, subset.and(Subset.at(row, row.input("factor"), level))));
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
      default -> Times.test(row, test.test());
    };
  }
}
