package trialwood.analysis.rate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Interval;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * Several treatments of one sticking compared on the logit scale. The first treatment is the
 * baseline: its coefficient is its logit, every other coefficient the difference from it.
 *
 * <p>Binomial: as if cuttings did not share a tray; z tests and the likelihood ratio.
 * Quasi-binomial: variances times φ = X²/df, t with the residual degrees of freedom, and F =
 * (change in deviance / df) / φ; for trays this is the one to read.
 *
 * <p>The published model takes φ as it comes. Below 1 the trays agree better than independent
 * cuttings could be relied on to, which a few trays do by luck; to decide by are {@link
 * #cautiousInterval} and {@link #cautiousTest}, in which φ is no less than 1.
 *
 * <p>Source: Wedderburn, R. W. M. (1974) Quasi-likelihood functions, generalized linear models, and
 * the Gauss–Newton method. Biometrika 61, 439–447; McCullagh, P. and Nelder, J. A. (1989)
 * Generalized Linear Models, 2nd ed. Chapman and Hall, section 4.5; for a φ below 1 Burnham, K. P.
 * and Anderson, D. R. (2002) Model Selection and Multimodel Inference, 2nd ed. Springer, section
 * 2.5
 *
 * @param treatments in order, the baseline first
 * @param model with treatments
 * @param without the same trays under one common proportion
 */
public record TreatmentLogit(
    List<TreatmentTrays> treatments, LogitModel model, LogitModel without) {

  /**
   * A coefficient and its test against 0.
   *
   * @param estimate on the logit scale
   * @param standardError on the same scale
   * @param ratio estimate ÷ standard error: z or t
   * @param pValue two-sided
   */
  public record Coefficient(double estimate, double standardError, double ratio, double pValue) {}

  /** An F test. */
  public record FTest(double statistic, int numerator, int denominator, double pValue) {

    static FTest of(double statistic, int numerator, int denominator) {
      double p = FDistribution.of(numerator, denominator).survivalProbability(statistic);
      return new FTest(statistic, numerator, denominator, p);
    }
  }

  /**
   * Lacking for fewer than two treatments, and where a treatment has all or nothing rooted.
   *
   * @param treatments the baseline first
   */
  public static Answer<TreatmentLogit> of(List<TreatmentTrays> treatments) {
    if (treatments.size() < 2) {
      return Answer.lacking("A comparison needs at least two treatments.");
    }
    for (TreatmentTrays treatment : treatments) {
      if (treatment.rooted() == 0 || treatment.rooted() == treatment.stuck()) {
        return Answer.lacking(
            "All or nothing rooted in " + treatment.treatment() + ": its logit has no bounds.");
      }
    }
    var trays = new ArrayList<TrayCount>();
    var design = new ArrayList<double[]>();
    var ones = new ArrayList<double[]>();
    for (int i = 0; i < treatments.size(); i++) {
      for (TrayCount tray : treatments.get(i).trays()) {
        double[] row = new double[treatments.size()];
        row[0] = 1;
        row[i] = 1;
        trays.add(tray);
        design.add(row);
        ones.add(new double[] {1});
      }
    }
    Answer<LogitModel> model = LogitModel.of(trays, design.toArray(double[][]::new));
    Answer<LogitModel> without = LogitModel.of(trays, ones.toArray(double[][]::new));
    if (model instanceof Answer.Known<LogitModel> with
        && without instanceof Answer.Known<LogitModel> pooled) {
      return Answer.known(
          new TreatmentLogit(List.copyOf(treatments), with.answer(), pooled.answer()));
    }
    return Answer.lacking(model.lack().or(without::lack).orElse("The fit did not settle."));
  }

  /** The binomial coefficient of a treatment, with z. */
  public Coefficient binomial(int treatment) {
    double estimate = model.coefficients().get(treatment);
    double error = model.covariance().error(treatment);
    double z = estimate / error;
    double p = 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z));
    return new Coefficient(estimate, error, z, p);
  }

  /** The likelihood-ratio test that all treatments are alike, if the counts are binomial. */
  public ChiSquareTest binomialTest() {
    return ChiSquareTest.of(without.deviance() - model.deviance(), numerator());
  }

  /** φ; lacking where it cannot be told or is 0, because the trays of each treatment agree. */
  public Answer<Double> phi() {
    Answer<Double> phi = model.phi();
    return phi instanceof Answer.Known<Double> known && known.answer() < 1e-12
        ? Answer.lacking("The trays of each treatment agree exactly: no spread to test against.")
        : phi;
  }

  /** The quasi-binomial coefficient of a treatment, with t; lacking like {@link #phi()}. */
  public Answer<Coefficient> quasi(int treatment) {
    if (!(phi() instanceof Answer.Known<Double> phi)) {
      return Answer.lacking(phi().lack().orElseThrow());
    }
    double estimate = model.coefficients().get(treatment);
    double error = model.covariance().error(treatment) * Math.sqrt(phi.answer());
    double t = estimate / error;
    double p = 2 * t().survivalProbability(Math.abs(t));
    return Answer.known(new Coefficient(estimate, error, t, p));
  }

  /** The F test that all treatments are alike; lacking like {@link #phi()}. */
  public Answer<FTest> quasiTest() {
    if (!(phi() instanceof Answer.Known<Double> phi)) {
      return Answer.lacking(phi().lack().orElseThrow());
    }
    double perTreatment = Math.max(0, without.deviance() - model.deviance()) / numerator();
    return Answer.known(
        FTest.of(perTreatment / phi.answer(), numerator(), model.residualDegreesOfFreedom()));
  }

  /** The same with φ no less than 1; lacking only where φ cannot be told. */
  public Answer<FTest> cautiousTest() {
    double perTreatment = Math.max(0, without.deviance() - model.deviance()) / numerator();
    return model
        .phi()
        .map(
            phi ->
                FTest.of(
                    perTreatment / Math.max(1, phi),
                    numerator(),
                    model.residualDegreesOfFreedom()));
  }

  /** The logit fitted to a treatment. */
  public double logit(int treatment) {
    double baseline = model.coefficients().get(0);
    return treatment == 0 ? baseline : baseline + model.coefficients().get(treatment);
  }

  /** The proportion fitted to a treatment. */
  public double fitted(int treatment) {
    return LogitModel.share(logit(treatment));
  }

  /** Quasi-binomial standard error of {@link #logit(int)}; lacking like {@link #phi()}. */
  public Answer<Double> logitError(int treatment) {
    return phi().map(phi -> logitError(treatment, phi));
  }

  /**
   * Quasi-binomial limits of a treatment's proportion: Student's interval on the logit scale,
   * turned back; lacking like {@link #phi()}.
   */
  public Answer<Interval> interval(int treatment, double level) {
    return phi().map(phi -> interval(treatment, level, phi));
  }

  /** The same with φ no less than 1; lacking only where φ cannot be told. */
  public Answer<Interval> cautiousInterval(int treatment, double level) {
    return model.phi().map(phi -> interval(treatment, level, Math.max(1, phi)));
  }

  private Interval interval(int treatment, double level, double phi) {
    Refuse.unlessInside(level, "level of an interval");
    double half = Quantile.of(t(), (1 + level) / 2) * logitError(treatment, phi);
    return new Interval(
        LogitModel.share(logit(treatment) - half),
        LogitModel.share(logit(treatment) + half),
        level);
  }

  private double logitError(int treatment, double phi) {
    double[] weights = new double[treatments.size()];
    weights[0] = 1;
    weights[treatment] = 1;
    return model.covariance().errorOf(weights) * Math.sqrt(phi);
  }

  private int numerator() {
    return treatments.size() - 1;
  }

  private TDistribution t() {
    return TDistribution.of(model.residualDegreesOfFreedom());
  }
}
