package trialwood.analysis.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Maximum;

/**
 * Maximum likelihood for tray counts that are beta-binomial: a mean μ for each treatment, one
 * intra-tray correlation ρ for all, Var(x) = nμ(1 − μ)(1 + (n − 1)ρ). Newton's method on (logit μ,
 * logit ρ). Where the likelihood falls as ρ leaves 0, ρ = 0 and the model is the binomial.
 *
 * <p>Source: Skellam, J. G. (1948) Journal of the Royal Statistical Society B 10, 257–261;
 * Williams, D. A. (1975) The analysis of binary responses from toxicological experiments involving
 * reproduction and teratogenicity. Biometrics 31, 949–952
 *
 * @param means one for each treatment
 * @param rho 0 or above: how much more alike cuttings of one tray are
 * @param logLikelihood binomial coefficients included
 * @param binomialLogLikelihood of the same means at ρ = 0
 * @param logitMeanErrors standard errors of logit μ by observed information
 * @param logitRhoError of logit ρ; lacking where ρ = 0
 */
public record BetaBinomial(
    List<Double> means,
    double rho,
    double logLikelihood,
    double binomialLogLikelihood,
    List<Double> logitMeanErrors,
    Answer<Double> logitRhoError) {

  /**
   * Lacking where a treatment has all or nothing rooted, and where no treatment has two trays.
   *
   * @param treatments at least one
   */
  public static Answer<BetaBinomial> of(List<TreatmentTrays> treatments) {
    for (TreatmentTrays treatment : treatments) {
      if (treatment.rooted() == 0 || treatment.rooted() == treatment.stuck()) {
        return Answer.lacking(
            "All or nothing rooted in " + treatment.treatment() + ": its mean has no interval.");
      }
    }
    if (treatments.stream().noneMatch(treatment -> treatment.trays().size() > 1)) {
      return Answer.lacking("The likeness inside a tray needs two trays of one treatment.");
    }
    double binomial = treatments.stream().mapToDouble(BetaBinomial::binomial).sum();
    var likelihood = new BetaBinomialLikelihood(treatments);
    if (likelihood.slopeAtNoLikeness() <= 0) {
      return Answer.known(withoutLikeness(treatments, binomial));
    }
    return Maximum.of(likelihood::at, likelihood.start()) instanceof Answer.Known<Maximum> found
        ? Answer.known(settled(found.answer(), treatments, binomial))
        : Answer.lacking("The fit did not settle.");
  }

  /** One mean for all trays, whatever their treatment. */
  public static Answer<BetaBinomial> pooled(List<TreatmentTrays> treatments) {
    List<TrayCount> all = treatments.stream().flatMap(group -> group.trays().stream()).toList();
    return of(List.of(new TreatmentTrays("all", all)));
  }

  /**
   * Is there any likeness inside a tray? The likelihood ratio against ρ = 0; as ρ cannot be below
   * 0, read {@link ChiSquareTest#pValueAtTheEdge()}.
   */
  public ChiSquareTest likenessTest() {
    return ChiSquareTest.ofLikelihoods(logLikelihood, binomialLogLikelihood, 1);
  }

  /** Are all treatments alike? The likelihood ratio against one mean with its own ρ. */
  public ChiSquareTest treatmentTest(BetaBinomial pooled) {
    return ChiSquareTest.ofLikelihoods(
        logLikelihood, pooled.logLikelihood, means.size() - pooled.means.size());
  }

  /** log μ/(1 − μ) of a treatment. */
  public double logitMean(int treatment) {
    double mean = means.get(treatment);
    return Math.log(mean / (1 - mean));
  }

  private static BetaBinomial withoutLikeness(List<TreatmentTrays> treatments, double binomial) {
    return new BetaBinomial(
        treatments.stream().map(TreatmentTrays::share).toList(),
        0,
        binomial,
        binomial,
        treatments.stream()
            .map(group -> 1 / Math.sqrt(group.stuck() * group.share() * (1 - group.share())))
            .toList(),
        Answer.lacking("The trays are no more uneven than chance."));
  }

  private static BetaBinomial settled(
      Maximum maximum, List<TreatmentTrays> treatments, double binomial) {
    int last = treatments.size();
    var means = new ArrayList<Double>();
    var errors = new ArrayList<Double>();
    for (int i = 0; i < last; i++) {
      means.add(LogitModel.share(maximum.at().get(i)));
      errors.add(maximum.covariance().error(i));
    }
    double coefficients =
        trays(treatments).mapToDouble(BetaBinomialLikelihood::logCoefficient).sum();
    return new BetaBinomial(
        List.copyOf(means),
        LogitModel.share(maximum.at().get(last)),
        maximum.value() + coefficients,
        binomial,
        List.copyOf(errors),
        Answer.known(maximum.covariance().error(last)));
  }

  private static Stream<TrayCount> trays(List<TreatmentTrays> treatments) {
    return treatments.stream().flatMap(group -> group.trays().stream());
  }

  private static double binomial(TreatmentTrays group) {
    return group.trays().stream()
        .mapToDouble(
            tray ->
                BinomialDistribution.of(tray.stuck(), group.share()).logProbability(tray.rooted()))
        .sum();
  }
}
