package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import trialwood.analysis.Answer;
import trialwood.analysis.means.AdjustedMeans;
import trialwood.analysis.means.CheckDifferences;
import trialwood.analysis.means.Contrast;
import trialwood.analysis.means.Groups;
import trialwood.analysis.means.LinearModel;
import trialwood.analysis.means.PairwiseDifferences;
import trialwood.analysis.means.PlotValues;
import trialwood.analysis.means.TwoStages;

/** The models behind the rows of means, each fitted once. */
final class MeansFits {

  /** The data suffice for no answer; where a row says NA, that is right. */
  static final class NoAnswer extends RuntimeException {

    private static final long serialVersionUID = 1L;

    NoAnswer(Answer<?> answer) {
      super(answer.lack().orElse(""));
    }
  }

  private final Map<String, Object> known = new HashMap<>();

  Groups groups(Row row) {
    return once("groups", row, Groups.class, () -> Groups.of(plots(row), treatment(row)));
  }

  LinearModel model(Row row) {
    return once(
        "model " + row.method(),
        row,
        LinearModel.class,
        () -> orNone(LinearModel.of(plots(row), terms(row).toArray(String[]::new))));
  }

  AdjustedMeans means(Row row) {
    String factor = treatment(row);
    return once("means " + factor, row, AdjustedMeans.class, () -> model(row).means(factor));
  }

  PairwiseDifferences pairs(Row row) {
    return once("pairs", row, PairwiseDifferences.class, () -> means(row).pairs());
  }

  PairwiseDifferences.Pair pair(Row row) {
    String[] levels = row.key().split(" vs ", 2);
    orNone(means(row).difference(levels[0], levels[1]));
    return pairs(row).pair(levels[0], levels[1]);
  }

  CheckDifferences againstCheck(Row row) {
    return once(
        "check",
        row,
        CheckDifferences.class,
        () -> orNone(means(row).against(row.input("control"))));
  }

  /** The contrast by the coefficients that another row gives for the same name. */
  Contrast contrast(Row row) {
    return once(
        "contrast " + row.key(),
        row,
        Contrast.class,
        () -> orNone(means(row).contrast(NamedContrast.read(coefficients(row)).coefficients())));
  }

  private static String coefficients(Row row) {
    return row.folder().rows().stream()
        .filter(other -> other.quantity().equals("coefficients"))
        .filter(other -> other.given().equals(row.given()) && other.key().equals(row.key()))
        .map(Row::value)
        .findAny()
        .orElseThrow(() -> new UnknownRow(row));
  }

  TwoStages stages(Row row) {
    String environment = row.input("environment");
    String block = row.input("block");
    String entry = row.input("entry");
    return once(
        "stages",
        row,
        TwoStages.class,
        () ->
            orNone(TwoStages.of(plots(row, environment, block, entry), environment, block, entry)));
  }

  /** The term of the model that a key such as {@code treatment}, {@code A:B} or {@code N} names. */
  String term(Row row) {
    List<String> factors =
        Arrays.stream(row.key().split(":")).map(role -> column(row, role)).toList();
    return terms(row).stream()
        .filter(term -> Set.of(term.split(":")).equals(Set.copyOf(factors)))
        .findAny()
        .orElseThrow(() -> new UnknownRow(row));
  }

  private static String column(Row row, String role) {
    return switch (role) {
      case "treatment", "between" -> treatment(row);
      default -> row.has(role) ? row.input(role) : role;
    };
  }

  private static List<String> terms(Row row) {
    if (row.has("model")) {
      return Formula.of(row.input("model")).terms();
    }
    if (row.has("A")) {
      List<String> order = List.of((row.has("order") ? row.input("order") : "A,B").split(","));
      var terms = new ArrayList<>(order.stream().map(role -> row.input(role.strip())).toList());
      if (!row.method().endsWith("_additive")) {
        terms.add(String.join(":", terms));
      }
      return terms;
    }
    var terms = new LinkedHashSet<String>();
    if (row.has("block")) {
      terms.add(row.input("block"));
    }
    terms.add(treatment(row));
    return List.copyOf(terms);
  }

  /** The factor asked about; in a model the one that has the key among its levels, or the last. */
  private static String treatment(Row row) {
    for (String name : List.of("factor", "treatment", "entry")) {
      if (row.has(name)) {
        return row.input(name);
      }
    }
    List<String> factors =
        Formula.of(row.input("model")).fixed().stream()
            .filter(term -> term.size() == 1)
            .map(term -> term.get(0))
            .toList();
    return factors.stream()
        .filter(factor -> row.data().text(factor).contains(row.key()))
        .findFirst()
        .orElse(factors.get(factors.size() - 1));
  }

  private static PlotValues plots(Row row) {
    Set<String> factors = new LinkedHashSet<>();
    terms(row).forEach(term -> factors.addAll(List.of(term.split(":"))));
    return plots(row, factors.toArray(String[]::new));
  }

  private static PlotValues plots(Row row, String... factors) {
    String response =
        row.has("response") ? row.input("response") : Formula.of(row.input("model")).response();
    PlotValues plots = PlotValues.of(transformed(row, row.data().numbers(response)));
    for (String factor : factors) {
      plots = plots.by(factor, row.data().text(factor));
    }
    return plots;
  }

  private static double[] transformed(Row row, double[] values) {
    return row.has("transform")
        ? switch (row.input("transform")) {
          case "sqrt" -> DoubleStream.of(values).map(Math::sqrt).toArray();
          case "log" -> DoubleStream.of(values).map(Math::log).toArray();
          default -> throw new UnknownRow(row);
        }
        : values;
  }

  static <T> T orNone(Answer<T> answer) {
    return answer.value().orElseThrow(() -> new NoAnswer(answer));
  }

  /** Rows that differ in nothing but a level of confidence share a fit. */
  private <T> T once(String what, Row row, Class<T> type, Supplier<T> fit) {
    String given = row.given().replaceAll(";(conf|alpha)=[^;]*", "");
    String key = what + " " + given;
    Object found = known.get(key);
    if (found == null) {
      found = fit.get();
      known.put(key, found);
    }
    return type.cast(found);
  }
}
