package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.BetaBinomial;
import trialwood.analysis.rate.BetaPosterior;
import trialwood.analysis.rate.BetaPrior;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.analysis.rate.FisherTest;
import trialwood.analysis.rate.FourfoldTable;
import trialwood.analysis.rate.LogitModel;
import trialwood.analysis.rate.OddsRatio;
import trialwood.analysis.rate.OneSidedLimit;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;
import trialwood.analysis.rate.TreatmentLogit;
import trialwood.analysis.rate.TreatmentTrays;

/** Proportions: 01, 02, 03 and 15. */
final class Rates implements Family {

  /** Fits of one line of inputs, made once. */
  private final Map<String, Object> fits = new HashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.ofEntries(
        Map.entry("wilson", row -> end(row, interval(row, BinomialInterval::wilson))),
        Map.entry("wilson_1s", row -> limit(row, OneSidedLimit.wilson(x(row), n(row), conf(row)))),
        Map.entry(
            "clopper_pearson", row -> end(row, interval(row, BinomialInterval::clopperPearson))),
        Map.entry(
            "clopper_pearson_1s",
            row -> limit(row, OneSidedLimit.clopperPearson(x(row), n(row), conf(row)))),
        Map.entry("jeffreys", row -> end(row, interval(row, BinomialInterval::jeffreys))),
        Map.entry("jeffreys.raw", row -> end(row, belief(row).interval(conf(row)))),
        Map.entry("jeffreys_1s", this::oneSidedJeffreys),
        Map.entry("jeffreys.posterior", row -> belief(row).mean()),
        Map.entry("fisher", this::fisher),
        Map.entry("odds_ratio", this::oddsRatio),
        Map.entry("newcombe", this::newcombe),
        Map.entry("pearson_chisq", row -> part(row, table(row).pearson(), this::chiSquare)),
        Map.entry("posterior.pr_gt", row -> belief(row).chanceAtLeast(row.number("threshold"))),
        Map.entry("posterior.pr_A_gt_B", this::ahead),
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

  // plain counts

  private interface IntervalMethod {
    Interval of(int hits, int n, double level);
  }

  private interface Quantity<T> {
    Object of(Row row, T answer);
  }

  private static int x(Row row) {
    return row.whole("x");
  }

  private static int n(Row row) {
    return row.whole("n");
  }

  private static double conf(Row row) {
    return row.number("conf");
  }

  private static BetaPosterior belief(Row row) {
    return BetaPosterior.of(x(row), n(row));
  }

  private static Interval interval(Row row, IntervalMethod method) {
    return method.of(x(row), n(row), conf(row));
  }

  private static Object end(Row row, Interval interval) {
    return switch (row.quantity()) {
      case "lower" -> interval.low();
      case "upper" -> interval.high();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object limit(Row row, OneSidedLimit limit) {
    return switch (row.quantity()) {
      case "lower" -> limit.low();
      case "upper" -> limit.high();
      default -> throw new UnknownRow(row);
    };
  }

  private Object oneSidedJeffreys(Row row) {
    return switch (row.quantity()) {
      case "lower" -> belief(row).quantile(1 - conf(row));
      case "upper" -> belief(row).quantile(conf(row));
      default -> throw new UnknownRow(row);
    };
  }

  // two counts

  private static FourfoldTable table(Row row) {
    return new FourfoldTable(row.whole("xA"), row.whole("nA"), row.whole("xB"), row.whole("nB"));
  }

  private Object fisher(Row row) {
    FisherTest test = table(row).fisher();
    return switch (row.quantity()) {
      case "p_two_sided" -> test.twoSided();
      case "p_greater" -> test.greater();
      case "p_less" -> test.less();
      default -> throw new UnknownRow(row);
    };
  }

  private Object oddsRatio(Row row) {
    OddsRatio odds = table(row).oddsRatio();
    return switch (row.quantity()) {
      case "sample_or" -> number(odds.sample());
      case "haldane_anscombe_or" -> odds.haldaneAnscombe();
      case "conditional_mle" -> number(odds.conditional());
      case "exact_lower" -> part(row, odds.exact(conf(row)), (r, limits) -> limits.low());
      case "exact_upper" -> part(row, odds.exact(conf(row)), (r, limits) -> limits.high());
      default -> throw new UnknownRow(row);
    };
  }

  private Object newcombe(Row row) {
    return row.quantity().equals("difference")
        ? table(row).difference()
        : end(row, table(row).newcombe(conf(row)));
  }

  private Object chiSquare(Row row, ChiSquareTest test) {
    return switch (row.quantity()) {
      case "statistic" -> test.statistic();
      case "df" -> test.degreesOfFreedom();
      case "p_value" -> test.pValue();
      default -> throw new UnknownRow(row);
    };
  }

  private Object ahead(Row row) {
    FourfoldTable table = table(row);
    return BetaPosterior.of(table.hits(), table.n())
        .chanceAheadOf(BetaPosterior.of(table.otherHits(), table.otherN()), row.number("delta"));
  }

  // treatments

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
    return once("logit " + row.given(), () -> TreatmentLogit.of(treatments(row)));
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
          part(row, fit.interval(at(row), conf(row)), (r, interval) -> interval.low());
      case "ci_upper" ->
          part(row, fit.interval(at(row), conf(row)), (r, interval) -> interval.high());
      default -> throw new UnknownRow(row);
    };
  }

  private Answer<BetaBinomial> betaBinomial(Row row) {
    return once("beta " + row.given(), () -> BetaBinomial.of(treatments(row)));
  }

  private Answer<BetaBinomial> nullModel(Row row) {
    return once("null " + row.given(), () -> BetaBinomial.pooled(treatments(row)));
  }

  private Answer<BetaBinomial> ofOneTreatment(Row row) {
    return once(
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

  private Object treatmentTest(Row row, BetaBinomial fit, Quantity<ChiSquareTest> quantity) {
    return part(row, nullModel(row), (r, pooled) -> quantity.of(r, fit.treatmentTest(pooled)));
  }

  // trays of one batch

  private Object trayPosterior(Row row) {
    TrayPosterior posterior = once(row.given(), () -> posterior(row));
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

  // answers

  private static Object number(Answer<Double> answer) {
    return answer.value().orElse(Double.NaN);
  }

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
