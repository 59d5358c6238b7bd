package trialwood.analysis.reference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import trialwood.analysis.mixed.AdjustedMeans;
import trialwood.analysis.mixed.Factor;
import trialwood.analysis.mixed.FixedEffect;
import trialwood.analysis.mixed.Heritability;
import trialwood.analysis.mixed.MixedFit;
import trialwood.analysis.mixed.MixedModel;
import trialwood.analysis.mixed.RandomEffect;
import trialwood.analysis.mixed.VarianceComponent;

/** Variance components, adjusted and shrunken means: 06 and 13. */
final class Mixed implements Family {

  private final Map<String, MixedFit> fits = new HashMap<>();
  private final Map<String, List<RandomEffect>> effects = new HashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "reml", this::reml,
        "blup", this::blup,
        "heritability", this::heritability,
        "variance_lrt", this::withoutOneTerm,
        "blue", this::blue);
  }

  private Object reml(Row row) {
    MixedFit fit = fit(row, "");
    return switch (row.quantity()) {
      case "vc" -> fit.variance(row.key());
      case "vc_se_expected_info" -> error(fit, fit.varianceErrors().expected(), row.key());
      case "vc_se_observed_info" -> error(fit, fit.varianceErrors().observed(), row.key());
      case "minus2_reml_loglik" -> fit.criterion();
      case "n_obs" -> fit.values();
      case "n_fixed" -> fit.fixedEffectsCount();
      case "beta" -> effect(fit, row.key()).estimate();
      case "beta_se" -> effect(fit, row.key()).se();
      default -> throw new UnknownRow(row);
    };
  }

  private Object blup(Row row) {
    Row model = row.modelRow();
    String term = row.input("term");
    RandomEffect effect =
        effects
            .computeIfAbsent(row.file() + model.given() + term, key -> fit(model, "").effects(term))
            .stream()
            .filter(one -> one.level().equals(row.key()))
            .findFirst()
            .orElseThrow(() -> new UnknownRow(row));
    return switch (row.quantity()) {
      case "blup" -> effect.effect();
      case "pev" -> effect.errorVariance();
      case "cond_var_lme4" -> effect.conditionalVariance();
      case "reliability" -> effect.reliability();
      default -> throw new UnknownRow(row);
    };
  }

  private static FixedEffect effect(MixedFit fit, String key) {
    return fit.fixedEffects().stream()
        .filter(
            one ->
                (one.factor() + one.level()).equals(key)
                    || one.factor().isEmpty() && key.equals("(Intercept)"))
        .findFirst()
        .orElseThrow();
  }

  private static double error(MixedFit fit, List<OptionalDouble> errors, String term) {
    List<String> terms = fit.variances().stream().map(VarianceComponent::term).toList();
    return errors.get(terms.indexOf(term)).orElse(Double.NaN);
  }

  private Object withoutOneTerm(Row row) {
    Row model = row.modelRow();
    double full = fit(model, "").criterion();
    double reduced = fit(model, row.input("dropped")).criterion();
    double ratio = Math.max(0, reduced - full);
    double tail = ChiSquaredDistribution.of(1).survivalProbability(ratio);
    return switch (row.quantity()) {
      case "minus2_reml_loglik_reduced" -> reduced;
      case "chisq" -> ratio;
      case "p_chisq1" -> tail;
      case "p_boundary_half" -> tail / 2;
      default -> throw new UnknownRow(row);
    };
  }

  private Object blue(Row row) {
    MixedFit fit = fit(row, "");
    if (row.quantity().equals("vc")) {
      return fit.variance(row.key());
    }
    AdjustedMeans means = fit.means(entries(row));
    return switch (row.quantity()) {
      case "mean" -> means.mean(row.key());
      case "se" -> means.se(row.key());
      case "mean_variance_of_difference" -> means.meanDifferenceVariance();
      case "mean_sed" -> means.meanSed();
      default -> throw new UnknownRow(row);
    };
  }

  private Object heritability(Row row) {
    if (row.quantity().equals("piepho_moehring")) {
      return Heritability.ofMeans(row.number("vg"), fit(row, "").means(row.input("entry")));
    }
    MixedFit fit = fit(row.modelRow(), "");
    String entries = row.input("entry");
    Heritability heritability = Heritability.of(fit, entries).value().orElseThrow();
    return switch (row.quantity()) {
      case "mean_pev_difference" -> heritability.meanDifferenceVariance();
      case "cullis" -> heritability.cullis();
      case "mean_reliability" -> heritability.meanReliability();
      case "phenotypic_variance_of_mean" -> ofMean(row, fit, entries);
      case "entry_mean_h2" -> heritability.variance() / ofMean(row, fit, entries);
      default -> throw new UnknownRow(row);
    };
  }

  private static double ofMean(Row row, MixedFit fit, String entries) {
    var divisors = new HashMap<String, Double>();
    for (String part : row.input("divisors").split("\\|")) {
      int slash = part.lastIndexOf('/');
      divisors.put(part.substring(0, slash), Double.valueOf(part.substring(slash + 1)));
    }
    return Heritability.varianceOfMean(fit, entries, divisors);
  }

  /** The last fixed factor is the one whose means are asked for. */
  private static String entries(Row row) {
    List<String> terms = Formula.of(row.input("model")).terms();
    return terms.get(terms.size() - 1);
  }

  private MixedFit fit(Row row, String dropped) {
    return fits.computeIfAbsent(
        row.input("data") + row.input("model") + " without " + dropped, key -> fresh(row, dropped));
  }

  private static MixedFit fresh(Row row, String dropped) {
    DataFile data = row.data();
    Formula formula = Formula.of(row.input("model"));
    double[] values = data.numbers(formula.response());
    int[] present =
        IntStream.range(0, values.length).filter(i -> !Double.isNaN(values[i])).toArray();
    MixedModel model = MixedModel.of(Arrays.stream(present).mapToDouble(i -> values[i]).toArray());
    for (List<String> term : formula.random()) {
      if (!String.join(":", term).equals(dropped)) {
        model = model.random(factor(data, present, term));
      }
    }
    for (List<String> term : formula.fixed()) {
      model = model.fixed(factor(data, present, term));
    }
    return model.fit().value().orElseThrow();
  }

  private static Factor factor(DataFile data, int[] present, List<String> columns) {
    return columns.stream()
        .map(name -> column(data, present, name))
        .reduce(Factor::crossed)
        .orElseThrow();
  }

  private static Factor column(DataFile data, int[] present, String name) {
    List<String> labels = data.text(name);
    return Factor.of(name, Arrays.stream(present).mapToObj(labels::get).toList());
  }
}
