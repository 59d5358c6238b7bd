package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.StraightLine;
import trialwood.analysis.growth.DiseaseProgress;
import trialwood.analysis.growth.GrowthCurve;
import trialwood.analysis.growth.Reading;

/** Growth and disease over time: 08. */
final class Growth implements Family {

  private final Map<String, Map<String, GrowthCurve>> curves = new ConcurrentHashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "linear_growth", this::linear,
        "relative_growth_rate", this::relative,
        "absolute_growth_rate", row -> orNone(curve(row).absoluteRate()),
        "auc", row -> curve(row).area(),
        "audpc", this::disease);
  }

  private Object linear(Row row) {
    Answer<StraightLine> line = curve(row).line();
    return switch (row.quantity()) {
      case "intercept" -> orNone(line.map(StraightLine::intercept));
      case "slope" -> orNone(line.map(StraightLine::slope));
      case "slope_se" -> orNone(then(line, StraightLine::slopeError));
      case "r_squared" -> orNone(then(line, StraightLine::rSquared));
      case "residual_sd" -> orNone(then(line, StraightLine::residualSd));
      default -> throw new UnknownRow(row);
    };
  }

  private Object relative(Row row) {
    return switch (row.quantity()) {
      case "rgr_overall" -> orNone(curve(row).relativeRate());
      case "rgr_regression" -> orNone(curve(row).relativeLine().map(StraightLine::slope));
      case "rgr_regression_se" -> orNone(then(curve(row).relativeLine(), StraightLine::slopeError));
      case "rgr_interval" -> between(row);
      default -> throw new UnknownRow(row);
    };
  }

  /** The key is {@code plant:from-to}. */
  private Object between(Row row) {
    int colon = row.key().lastIndexOf(':');
    String times = row.key().substring(colon + 1);
    var rates = curves(row).get(row.key().substring(0, colon)).relativeRates();
    return rates.value().stream()
        .flatMap(List::stream)
        .filter(rate -> times.equals(plain(rate.from()) + "-" + plain(rate.to())))
        .findFirst()
        .map(GrowthCurve.Between::rate)
        .orElse(Double.NaN);
  }

  private Object disease(Row row) {
    Answer<DiseaseProgress> progress = DiseaseProgress.of(curve(row).readings());
    return switch (row.quantity()) {
      case "audpc" -> orNone(progress.map(DiseaseProgress::area));
      case "audpc_per_day" -> orNone(progress.map(DiseaseProgress::meanSeverity));
      case "audpc_relative" -> orNone(progress.map(DiseaseProgress::relativeArea));
      case "audps" -> orNone(progress.map(DiseaseProgress::stairs));
      default -> throw new UnknownRow(row);
    };
  }

  private GrowthCurve curve(Row row) {
    return curves(row).get(row.key());
  }

  private Map<String, GrowthCurve> curves(Row row) {
    return curves.computeIfAbsent(row.given(), given -> read(row));
  }

  private static Map<String, GrowthCurve> read(Row row) {
    DataFile data = row.data();
    List<String> plants = data.text(row.input("id"));
    double[] times = data.numbers(row.input("time"));
    double[] values = data.numbers(row.input("response"));
    var readings = new LinkedHashMap<String, List<Reading>>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i]) && !Double.isNaN(times[i])) {
        readings
            .computeIfAbsent(plants.get(i), plant -> new ArrayList<>())
            .add(new Reading(times[i], values[i]));
      }
    }
    var curves = new LinkedHashMap<String, GrowthCurve>();
    readings.forEach((plant, own) -> curves.put(plant, GrowthCurve.of(own)));
    return curves;
  }

  /** A time as the file writes it: whole numbers without a point. */
  private static String plain(double time) {
    return time == Math.rint(time) ? Long.toString((long) time) : Double.toString(time);
  }

  private static Answer<Double> then(
      Answer<StraightLine> line, Function<StraightLine, Answer<Double>> asked) {
    return line.value().map(asked).orElseGet(() -> Answer.lacking("There is no line."));
  }

  private static double orNone(Answer<Double> answer) {
    return answer.value().orElse(Double.NaN);
  }
}
