package trialwood.analysis.reference;

import static trialwood.analysis.reference.Fits.number;
import static trialwood.analysis.reference.Fits.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.rate.BetaBinomial;
import trialwood.analysis.rate.BetaPrior;
import trialwood.analysis.rate.LogitModel;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;
import trialwood.analysis.rate.TreatmentLogit;
import trialwood.analysis.rate.TreatmentTrays;

/** Counts in trays: 03 and 15. */
final class TrayCounts implements Family {

  private final Fits fits = new Fits();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.ofEntries(
        Map.entry("pooled", this::pooled),
        Map.entry("glm", row -> part(row, logit(row), this::glm)),
        Map.entry("quasi", row -> part(row, logit(row), this::quasi)),
        Map.entry("betabinom", row -> part(row, betaBinomial(row), this::betaBinomial)),
        Map.entry(
            "betabinom.null",
            row -> part(row, nullModel(row), (r, fit) -> betaBinomial(r, fit, 0))),
        Map.entry(
            "betabinom.by_treatment",
            row -> part(row, ofOneTreatment(row), (r, fit) -> betaBinomial(r, fit, 0))),
        Map.entry("tray_posterior", this::trayPosterior));
  }

  private static List<TreatmentTrays> treatments(Row row) {
    var groups = new LinkedHashMap<String, List<TrayCount>>();
    groups.put(row.input("baseline"), new ArrayList<>());
    var others = new TreeMap<String, List<TrayCount>>();
    List<String> names = row.data().text(row.input("factor"));
    double[] rooted = row.data().numbers(row.input("response"));
    double[] stuck = row.data().numbers(row.input("size"));
    for (int i = 0; i < stuck.length; i++) {
      if (!names.get(i).isEmpty() && stuck[i] > 0 && !Double.isNaN(rooted[i])) {
        List<TrayCount> group =
            groups.containsKey(names.get(i))
                ? groups.get(names.get(i))
                : others.computeIfAbsent(names.get(i), name -> new ArrayList<>());
        group.add(new TrayCount((int) rooted[i], (int) stuck[i]));
      }
    }
    groups.putAll(others);
    return groups.entrySet().stream()
        .map(group -> new TreatmentTrays(group.getKey(), group.getValue()))
        .toList();
  }

  /** Which treatment a key means. */
  private static int at(Row row) {
    List<String> names = treatments(row).stream().map(TreatmentTrays::treatment).toList();
    return row.key().equals("(Intercept)") ? 0 : names.indexOf(row.key());
  }

  private Object pooled(Row row) {
    TreatmentTrays group = treatments(row).get(at(row));
    return switch (row.quantity()) {
      case "successes" -> group.rooted();
      case "trials" -> group.stuck();
      case "proportion" -> group.share();
      default -> throw new UnknownRow(row);
    };
  }

  private Answer<TreatmentLogit> logit(Row row) {
    return fits.once("logit " + row.given(), () -> TreatmentLogit.of(treatments(row)));
  }

  private Object glm(Row row, TreatmentLogit fit) {
    LogitModel model = fit.model();
    return switch (row.quantity()) {
      case "coef" -> fit.binomial(at(row)).estimate();
      case "se" -> fit.binomial(at(row)).standardError();
      case "z" -> fit.binomial(at(row)).ratio();
      case "p" -> fit.binomial(at(row)).pValue();
      case "deviance" -> model.deviance();
      case "null_deviance" -> fit.without().deviance();
      case "df_residual" -> model.residualDegreesOfFreedom();
      case "df_null" -> fit.without().residualDegreesOfFreedom();
      case "aic" -> model.aic();
      case "loglik" -> model.logLikelihood();
      case "pearson_chisq" -> model.pearson();
      case "lrt_chisq" -> fit.binomialTest().statistic();
      case "lrt_df" -> fit.binomialTest().degreesOfFreedom();
      case "lrt_p" -> fit.binomialTest().pValue();
      default -> throw new UnknownRow(row);
    };
  }

  private Object quasi(Row row, TreatmentLogit fit) {
    return switch (row.quantity()) {
      case "phi" -> number(fit.phi());
      case "coef" -> part(row, fit.quasi(at(row)), (r, found) -> found.estimate());
      case "se" -> part(row, fit.quasi(at(row)), (r, found) -> found.standardError());
      case "t" -> part(row, fit.quasi(at(row)), (r, found) -> found.ratio());
      case "p" -> part(row, fit.quasi(at(row)), (r, found) -> found.pValue());
      case "F" -> part(row, fit.quasiTest(), (r, test) -> test.statistic());
      case "F_df1" -> part(row, fit.quasiTest(), (r, test) -> test.numerator());
      case "F_df2" -> part(row, fit.quasiTest(), (r, test) -> test.denominator());
      case "F_p" -> part(row, fit.quasiTest(), (r, test) -> test.pValue());
      case "fitted" -> fit.fitted(at(row));
      case "logit_se" -> number(fit.logitError(at(row)));
      case "ci_lower" ->
          part(row, fit.interval(at(row), row.number("conf")), (r, interval) -> interval.low());
      case "ci_upper" ->
          part(row, fit.interval(at(row), row.number("conf")), (r, interval) -> interval.high());
      default -> throw new UnknownRow(row);
    };
  }

  private Answer<BetaBinomial> betaBinomial(Row row) {
    return fits.once("beta " + row.given(), () -> BetaBinomial.of(treatments(row)));
  }

  private Answer<BetaBinomial> nullModel(Row row) {
    return fits.once("null " + row.given(), () -> BetaBinomial.pooled(treatments(row)));
  }

  private Answer<BetaBinomial> ofOneTreatment(Row row) {
    return fits.once(
        row.key() + " of " + row.given(),
        () -> BetaBinomial.of(List.of(treatments(row).get(at(row)))));
  }

  private Object betaBinomial(Row row, BetaBinomial fit) {
    return betaBinomial(row, fit, row.key().isEmpty() ? 0 : at(row));
  }

  private Object betaBinomial(Row row, BetaBinomial fit, int at) {
    return switch (row.quantity()) {
      case "mu" -> fit.means().get(at);
      case "logit_mu" -> fit.logitMean(at);
      case "logit_mu_se" -> fit.logitMeanErrors().get(at);
      case "rho" -> fit.rho();
      case "logit_rho_se" -> number(fit.logitRhoError());
      case "loglik" -> fit.logLikelihood();
      case "loglik_binomial" -> fit.binomialLogLikelihood();
      case "overdispersion_lrt" -> fit.likenessTest().statistic();
      case "overdispersion_p_boundary" -> fit.likenessTest().pValueAtTheEdge();
      case "treatment_lrt" -> treatmentTest(row, fit, (r, test) -> test.statistic());
      case "treatment_df" -> treatmentTest(row, fit, (r, test) -> test.degreesOfFreedom());
      case "treatment_p" -> treatmentTest(row, fit, (r, test) -> test.pValue());
      default -> throw new UnknownRow(row);
    };
  }

  private Object treatmentTest(Row row, BetaBinomial fit, Fits.Quantity<ChiSquareTest> quantity) {
    return part(row, nullModel(row), (r, pooled) -> quantity.of(r, fit.treatmentTest(pooled)));
  }

  private Object trayPosterior(Row row) {
    TrayPosterior posterior = fits.once(row.given(), () -> posterior(row));
    return switch (row.quantity()) {
      case "mean" -> posterior.mean();
      case "sd" -> posterior.sd();
      case "rho_mean" -> posterior.rhoMean();
      case "log_evidence" -> posterior.logEvidence();
      case "pr_ge" -> posterior.chanceAtLeast(row.keyNumber());
      case "quantile" -> posterior.quantile(row.keyNumber());
      default -> throw new UnknownRow(row);
    };
  }

  private static TrayPosterior posterior(Row row) {
    double[] rooted = row.numbers("x");
    double[] stuck = row.numbers("n");
    double[] share = row.numbers("prior_p");
    double[] likeness = row.numbers("prior_rho");
    return TrayPosterior.of(
        IntStream.range(0, stuck.length)
            .mapToObj(i -> new TrayCount((int) rooted[i], (int) stuck[i]))
            .toList(),
        new TrayPrior(new BetaPrior(share[0], share[1]), new BetaPrior(likeness[0], likeness[1])));
  }
}
