package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * What the trays of one batch say about the true proportion p that roots.
 *
 * <p>The tray is the replicate. Tray i with nᵢ stuck has xᵢ rooted, beta-binomial with mean p and
 * intra-tray correlation ρ, so that Var(xᵢ) = nᵢ p(1 − p)(1 + (nᵢ − 1)ρ); p and ρ have independent
 * beta priors. The posterior of p, with ρ integrated out, is found by quadrature over (p, ρ). Few
 * trays leave it wide, uneven trays widen it further.
 *
 * <p>Any number of trays from one upwards. With a single tray ρ is known from its prior only.
 *
 * <p>Source: Skellam, J. G. (1948) A probability distribution derived from the binomial
 * distribution by regarding the probability of success as variable between the sets of trials.
 * Journal of the Royal Statistical Society B 10, 257–261
 */
public final class TrayPosterior implements Belief {

  private static final int SHARE_POINTS = 128;
  private static final int LIKENESS_POINTS = 32;
  private static final double[] SHARE_WEIGHTS = Chebyshev.weights(SHARE_POINTS);
  private static final double[] LIKENESS_WEIGHTS = Chebyshev.weights(LIKENESS_POINTS);

  private final List<TrayCount> trays;
  private final TrayPrior prior;
  private final double mean;
  private final double sd;
  private final double rhoMean;
  private final double logEvidence;

  /** Posterior density of the angle v, where p = sin² v. */
  private final Chebyshev density;

  private TrayPosterior(List<TrayCount> trays, TrayPrior prior) {
    this.trays = List.copyOf(trays);
    this.prior = prior;

    JointDensity joint = new JointDensity(trays, prior);
    JointDensity.Window window = joint.window();
    double[] v = Chebyshev.points(window.shareLow(), window.shareHigh(), SHARE_POINTS);
    double[] w = Chebyshev.points(window.likenessLow(), window.likenessHigh(), LIKENESS_POINTS);
    double[] p = Arrays.stream(v).map(JointDensity::ofAngle).toArray();
    double[][] log = joint.logOn(v, w);
    double peak = Arrays.stream(log).flatMapToDouble(Arrays::stream).max().orElseThrow();

    double[] marginal = new double[SHARE_POINTS];
    double total = 0;
    double rhoTotal = 0;
    for (int i = 0; i < LIKENESS_POINTS; i++) {
      double slice = 0;
      for (int k = 0; k < SHARE_POINTS; k++) {
        double mass = LIKENESS_WEIGHTS[i] * Math.exp(log[i][k] - peak);
        marginal[k] += mass;
        slice += SHARE_WEIGHTS[k] * mass;
      }
      total += slice;
      rhoTotal += slice * JointDensity.ofAngle(w[i]);
    }
    double first = 0;
    for (int k = 0; k < SHARE_POINTS; k++) {
      marginal[k] /= total;
      first += SHARE_WEIGHTS[k] * marginal[k] * p[k];
    }
    double second = 0;
    for (int k = 0; k < SHARE_POINTS; k++) {
      second += SHARE_WEIGHTS[k] * marginal[k] * (p[k] - first) * (p[k] - first);
      marginal[k] /= window.shareHigh() - window.shareLow();
    }
    this.mean = first;
    this.sd = Math.sqrt(second);
    this.rhoMean = rhoTotal / total;
    this.logEvidence = peak + Math.log(total * window.area()) + logCoefficients(trays);
    this.density = new Chebyshev(window.shareLow(), window.shareHigh(), marginal);
  }

  /**
   * The posterior under {@link TrayPrior#USUAL}.
   *
   * @throws IllegalArgumentException if there is no tray
   */
  public static TrayPosterior of(List<TrayCount> trays) {
    return of(trays, TrayPrior.USUAL);
  }

  /**
   * The posterior under the given prior.
   *
   * @throws IllegalArgumentException if there is no tray
   */
  public static TrayPosterior of(List<TrayCount> trays, TrayPrior prior) {
    Refuse.unless(!trays.isEmpty(), "No tray has been counted.");
    return new TrayPosterior(trays, prior);
  }

  /** The counts, as given. */
  public List<TrayCount> trays() {
    return trays;
  }

  public TrayPrior prior() {
    return prior;
  }

  /** Rooted over all trays. */
  public int rooted() {
    return trays.stream().mapToInt(TrayCount::rooted).sum();
  }

  /** Stuck over all trays. */
  public int stuck() {
    return trays.stream().mapToInt(TrayCount::stuck).sum();
  }

  /** Rooted ÷ stuck over all trays. */
  public double rawShare() {
    return (double) rooted() / stuck();
  }

  /** Posterior mean of p. */
  @Override
  public double mean() {
    return mean;
  }

  /** Posterior standard deviation of p. */
  public double sd() {
    return sd;
  }

  /** Posterior mean of the intra-tray correlation ρ. */
  public double rhoMean() {
    return rhoMean;
  }

  /** Natural logarithm of the probability of the counts under the prior, coefficients included. */
  public double logEvidence() {
    return logEvidence;
  }

  /** Posterior probability that p ≥ {@code line}; 1 for a line at or below 0, 0 above 1. */
  @Override
  public double chanceAtLeast(double line) {
    return 1 - chanceBelow(line);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return JointDensity.ofAngle(
        Quantile.solve(density::integralTo, density.low(), density.high(), probability));
  }

  /** The density of the angle v with p = sin² v, for integrals over p. */
  Chebyshev density() {
    return density;
  }

  /** Posterior probability that p &lt; {@code line}. */
  double chanceBelow(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    if (line <= 0) {
      return 0;
    }
    return line >= 1 ? 1 : clipped(density.integralTo(Math.asin(Math.sqrt(line))));
  }

  private static double clipped(double probability) {
    return Math.min(1, Math.max(0, probability));
  }

  private static double logCoefficients(List<TrayCount> trays) {
    // at one half every outcome of the binomial has probability 2⁻ⁿ apart from its coefficient
    return trays.stream()
        .mapToDouble(
            tray ->
                BinomialDistribution.of(tray.stuck(), 0.5).logProbability(tray.rooted())
                    + tray.stuck() * Math.log(2))
        .sum();
  }
}
