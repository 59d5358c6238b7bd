package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.selection.BestOfMany;
import trialwood.analysis.selection.FamilyCount;
import trialwood.analysis.selection.FamilyMeans;
import trialwood.analysis.selection.FamilyRate;
import trialwood.analysis.selection.FamilyRates;
import trialwood.analysis.selection.FamilySample;
import trialwood.analysis.selection.FamilyVariance;
import trialwood.analysis.selection.IndexTraits;
import trialwood.analysis.selection.Response;
import trialwood.analysis.selection.SelectionIndex;
import trialwood.analysis.selection.Truncation;

/** Selection: 09, with {@link Pedigrees}. */
final class Selection implements Family {

  private final Map<String, Answer<?>> fits = new ConcurrentHashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    var methods = new HashMap<>(new Pedigrees().methods());
    methods.putAll(own());
    return methods;
  }

  private Map<String, Function<Row, Object>> own() {
    return Map.ofEntries(
        Map.entry("selection_intensity.infinite", Selection::truncation),
        Map.entry("selection_intensity.finite", Selection::bestOfMany),
        Map.entry("breeders_equation", Selection::response),
        Map.entry(
            "family_anova",
            row -> of(row, () -> FamilyVariance.of(families(row)), Selection::variance)),
        Map.entry(
            "family_reml", row -> of(row, () -> FamilyMeans.of(families(row)), Selection::means)),
        Map.entry(
            "family_blup", row -> of(row, () -> FamilyMeans.of(families(row)), Selection::shrunk)),
        Map.entry(
            "eb_moment",
            row -> of(row, () -> FamilyRates.byMoments(counts(row)), Selection::rates)),
        Map.entry(
            "eb_ml", row -> of(row, () -> FamilyRates.byLikelihood(counts(row)), Selection::rates)),
        Map.entry("smith_hazel", Selection::index),
        Map.entry("single_trait", Selection::singleTrait),
        Map.entry("desired_gains", Selection::desiredGains));
  }

  private static Object truncation(Row row) {
    Truncation kept = Truncation.keeping(row.number("p"));
    return switch (row.quantity()) {
      case "truncation_point" -> kept.point();
      case "intensity" -> kept.intensity();
      case "variance_reduction_k" -> kept.varianceLost();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object bestOfMany(Row row) {
    BestOfMany best = new BestOfMany(row.whole("selected"), row.whole("candidates"));
    return switch (row.quantity()) {
      case "intensity_exact_order_statistics" -> best.intensity();
      case "intensity_burrows_1972" -> best.burrows();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object response(Row row) {
    Response response = Response.keeping(row.number("p"), row.number("h2"), row.number("sigma_p"));
    return switch (row.quantity()) {
      case "selection_differential" -> response.differential();
      case "response" -> response.response();
      case "response_accuracy_form" ->
          response.intensity() * response.accuracy() * response.additiveSpread();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object variance(FamilyVariance fit, Row row) {
    return switch (row.quantity()) {
      case "families" -> fit.families();
      case "records" -> fit.plants();
      case "n0" -> fit.effectiveSize();
      case "ms_family" -> fit.meanSquareFamily();
      case "ms_within", "var_within" -> fit.meanSquareWithin();
      case "F" -> fit.f();
      case "p" -> fit.pValue();
      case "var_family" -> fit.varianceOfFamilies();
      case "intraclass_t" -> fit.likeness();
      case "t_se_swiger" -> fit.likenessError();
      case "h2" -> fit.heritability(row.number("h2_multiplier"));
      case "h2_se" -> fit.heritabilityError(row.number("h2_multiplier"));
      default -> throw new UnknownRow(row);
    };
  }

  private static Object means(FamilyMeans fit, Row row) {
    return switch (row.quantity()) {
      case "var_family" -> fit.varianceOfFamilies();
      case "var_within" -> fit.varianceWithin();
      case "h2" -> fit.heritability(row.number("h2_multiplier"));
      case "mean" -> fit.mean();
      case "minus2_reml_loglik" -> fit.minusTwoLogLikelihood();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object shrunk(FamilyMeans fit, Row row) {
    FamilyMeans.ShrunkMean family = fit.of(row.key());
    return switch (row.quantity()) {
      case "blup" -> family.effect();
      case "shrinkage_weight" -> family.weight();
      case "reliability_incl_mean" -> family.reliability();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object rates(FamilyRates fit, Row row) {
    return switch (row.quantity()) {
      case "mean" -> fit.mean();
      case "rho" -> fit.likeness();
      case "alpha" -> fit.prior().a();
      case "beta" -> fit.prior().b();
      case "loglik" -> fit.logLikelihood();
      default -> rate(fit.of(row.key()), row);
    };
  }

  private static Object rate(FamilyRate rate, Row row) {
    return switch (row.quantity()) {
      case "posterior_mean" -> rate.mean();
      case "posterior_lower95" -> rate.quantile(0.025);
      case "posterior_upper95" -> rate.quantile(0.975);
      case "pr_below_threshold" -> 1 - rate.chanceAtLeast(row.number("threshold"));
      default -> throw new UnknownRow(row);
    };
  }

  private static Object index(Row row) {
    SelectionIndex index = traits(row).forWorth(row.numbers("a"));
    double intensity = Truncation.keeping(row.number("p")).intensity();
    return switch (row.quantity()) {
      case "b" -> index.weights()[trait(row)];
      case "sd_index" -> index.spread();
      case "sd_merit" -> index.spreadOfWorth();
      case "accuracy" -> index.accuracy();
      case "response_merit" -> index.response(intensity);
      case "trait_response" -> index.traitResponses(intensity)[trait(row)];
      default -> throw new UnknownRow(row);
    };
  }

  private static Object singleTrait(Row row) {
    return traits(row)
        .singleTraitResponse(trait(row), Truncation.keeping(row.number("p")).intensity());
  }

  private static Object desiredGains(Row row) {
    return traits(row).weightsForGains(row.numbers("d"))[trait(row)];
  }

  private static List<FamilySample> families(Row row) {
    DataFile data = row.data();
    double[] values = data.numbers(row.input("response"));
    List<String> families = data.text(row.input("family"));
    var byFamily = new TreeMap<String, List<Double>>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        byFamily.computeIfAbsent(families.get(i), name -> new ArrayList<>()).add(values[i]);
      }
    }
    return byFamily.entrySet().stream()
        .map(own -> FamilySample.of(own.getKey(), own.getValue()))
        .toList();
  }

  private static List<FamilyCount> counts(Row row) {
    DataFile data = row.data();
    double[] hits = data.numbers(row.input("successes"));
    double[] seedlings = data.numbers(row.input("trials"));
    List<String> families = data.text(row.input("id"));
    var counts = new ArrayList<FamilyCount>();
    for (int i = 0; i < hits.length; i++) {
      if (!Double.isNaN(hits[i]) && seedlings[i] > 0) {
        counts.add(new FamilyCount(families.get(i), (int) hits[i], (int) seedlings[i]));
      }
    }
    return counts;
  }

  private static IndexTraits traits(Row row) {
    return new IndexTraits(triangle(row.numbers("P")), triangle(row.numbers("G")));
  }

  /** A symmetric table from its upper triangle by columns: 11, 12, 22, 13, 23, 33. */
  private static double[][] triangle(double[] entries) {
    int traits = (int) Math.round((Math.sqrt(8.0 * entries.length + 1) - 1) / 2);
    double[][] table = new double[traits][traits];
    int next = 0;
    for (int column = 0; column < traits; column++) {
      for (int row = 0; row <= column; row++) {
        table[row][column] = entries[next];
        table[column][row] = entries[next++];
      }
    }
    return table;
  }

  private static int trait(Row row) {
    return Integer.parseInt(row.key().replaceAll("\\D", "")) - 1;
  }

  private interface Fitting<T> {
    Answer<T> fit();
  }

  /** What is asked of a fit that the rows of one case share; NaN where there is none. */
  @SuppressWarnings("unchecked")
  private <T> Object of(Row row, Fitting<T> fitting, BiFunction<T, Row, Object> asked) {
    var fit =
        (Answer<T>) fits.computeIfAbsent(row.method() + " " + row.given(), given -> fitting.fit());
    return fit.map(known -> asked.apply(known, row)).value().orElse(Double.NaN);
  }
}
