package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.stability.Ammi;
import trialwood.analysis.stability.EntryStability;
import trialwood.analysis.stability.JointRegression;
import trialwood.analysis.stability.StabilityLine;
import trialwood.analysis.trial.Better;

/** Entry by environment: 07. */
final class Stability implements Family {

  private final Map<String, Fit> fits = new ConcurrentHashMap<>();

  /** All that the rows of one table ask for, computed once. */
  private record Fit(
      TwoWayTable table,
      Answer<JointRegression> lines,
      Answer<List<EntryStability>> measures,
      Answer<Ammi> ammi) {}

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "gxe_table", this::table,
        "finlay_wilkinson", row -> of(fit(row).lines(), row, Stability::line),
        "eberhart_russell", row -> of(fit(row).lines(), row, Stability::line),
        "joint_regression", row -> of(fit(row).lines(), row, Stability::jointly),
        "wricke", row -> of(fit(row).measures(), row, Stability::measure),
        "shukla", row -> of(fit(row).measures(), row, Stability::measure),
        "lin_binns", row -> of(fit(row).measures(), row, Stability::measure),
        "environmental_variance", row -> of(fit(row).measures(), row, Stability::measure),
        "rank_sum", row -> of(fit(row).measures(), row, Stability::measure),
        "ammi", row -> of(fit(row).ammi(), row, Stability::ammi));
  }

  private Object table(Row row) {
    TwoWayTable table = fit(row).table();
    return switch (row.quantity()) {
      case "genotype_mean" -> table.rowMean(table.rowOf(row.key()));
      case "environment_index" -> table.columnEffect(table.columns().indexOf(row.key()));
      case "grand_mean" -> table.grandMean();
      case "ss_genotype" -> table.rowSquares();
      case "ss_environment" -> table.columnSquares();
      case "ss_interaction" -> table.interactionSquares();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object line(JointRegression lines, Row row) {
    StabilityLine line = lines.of(row.key());
    return switch (row.quantity()) {
      case "slope" -> line.slope();
      case "slope_se" -> line.slopeError();
      case "intercept_at_index_0" -> line.mean();
      case "r_squared" -> orNone(line.line().rSquared());
      case "p_slope_eq_1" -> orNone(line.chanceSlopeIsOne());
      case "deviation_ms" -> line.deviation();
      case "s2_deviation" -> line.deviationBeyondError(row.number("error_ms"), replicates(row));
      default -> throw new UnknownRow(row);
    };
  }

  private static Object jointly(JointRegression lines, Row row) {
    return switch (row.quantity()) {
      case "ss_heterogeneity_of_slopes" -> lines.slopeSquares();
      case "ss_pooled_deviations" -> lines.deviationSquares();
      case "df_heterogeneity" -> lines.slopeDf();
      case "df_deviations" -> lines.deviationDf();
      case "F" -> orNone(lines.f());
      case "p" -> orNone(lines.pValue());
      default -> throw new UnknownRow(row);
    };
  }

  private static Object measure(List<EntryStability> measures, Row row) {
    EntryStability measure =
        measures.stream()
            .filter(line -> line.entry().equals(row.key()))
            .findFirst()
            .orElseThrow(() -> new UnknownRow(row));
    return switch (row.quantity()) {
      case "ecovalence" -> measure.ecovalence();
      case "variance" ->
          row.method().equals("shukla")
              ? measure.stabilityVariance()
              : measure.environmentalVariance();
      case "P_i" -> measure.superiority();
      case "rank_mean_desc" -> measure.placeByMean();
      case "rank_shukla_asc" -> measure.placeByVariance();
      case "rank_sum" -> measure.rankSum();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object ammi(Ammi ammi, Row row) {
    return switch (row.quantity()) {
      case "singular_value" -> axis(ammi, row).singularValue();
      case "percent_ss" -> 100 * axis(ammi, row).share();
      case "ss" -> axis(ammi, row).squares();
      case "gollob_df" -> axis(ammi, row).df();
      case "gollob_F" -> axis(ammi, row).f(row.number("error_ms"));
      case "gollob_p" -> axis(ammi, row).pValue(row.number("error_ms"), row.number("error_df"));
      case "genotype_score_squared_ipc1" -> square(ammi.entryScore(row.key(), 0));
      case "genotype_score_squared_ipc2" -> square(ammi.entryScore(row.key(), 1));
      case "environment_score_squared_ipc1" -> square(ammi.environmentScore(row.key(), 0));
      case "environment_score_squared_ipc2" -> square(ammi.environmentScore(row.key(), 1));
      case "genotype_distance_ipc12" -> {
        String[] pair = row.key().split(" vs ");
        yield ammi.distance(pair[0], pair[1]);
      }
      case "asv" -> orNone(ammi.stabilityValue(row.key()));
      default -> throw new UnknownRow(row);
    };
  }

  private static Ammi.Axis axis(Ammi ammi, Row row) {
    return ammi.axes().get(Integer.parseInt(row.key().replaceAll("\\D", "")) - 1);
  }

  private Fit fit(Row row) {
    return fits.computeIfAbsent(row.given(), given -> fitted(row));
  }

  private static Fit fitted(Row row) {
    DataFile data = row.data();
    List<String> entries = data.text(row.input("genotype"));
    List<String> environments = data.text(row.input("environment"));
    double[] values = data.numbers(row.input("response").split(" ", 2)[0]);
    var cells = new ArrayList<TwoWayTable.Cell>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        cells.add(new TwoWayTable.Cell(entries.get(i), environments.get(i), values[i]));
      }
    }
    TwoWayTable table = TwoWayTable.of(cells).value().orElseThrow();
    return new Fit(
        table,
        JointRegression.of(table),
        EntryStability.of(table, Better.HIGHER),
        Ammi.of(table, replicates(row)));
  }

  private static double replicates(Row row) {
    return row.has("reps") ? row.number("reps") : 1;
  }

  private static double square(double score) {
    return score * score;
  }

  private static double orNone(Answer<Double> answer) {
    return answer.value().orElse(Double.NaN);
  }

  private static <T> Object of(Answer<T> fit, Row row, BiFunction<T, Row, Object> asked) {
    return fit.map(known -> asked.apply(known, row)).value().orElse(Double.NaN);
  }
}
