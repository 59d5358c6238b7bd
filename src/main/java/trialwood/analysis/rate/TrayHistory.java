package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;

/**
 * The prior of the intra-tray correlation ρ as the nursery's own past batches teach it.
 *
 * <p>Every batch has its own p ~ Beta(½, ½) and its own ρ ~ Beta(1, b). The mean of ρ, 1/(1 + b),
 * is the one, to the nearest 0.001, under which all past counts together are most probable, with
 * every p and ρ summed out by quadrature (empirical Bayes). It is kept between 0.01 and 0.25; the
 * first weight stays 1, for a few dozen trays cannot tell the shape of the prior. A batch of one
 * tray says nothing about trays and does not count.
 *
 * <p>Source: Robbins, H. (1956) An empirical Bayes approach to statistics. Proceedings of the Third
 * Berkeley Symposium 1, 157–163; Griffiths, D. A. (1973) Maximum likelihood estimation for the
 * beta-binomial distribution. Biometrics 29, 637–648
 *
 * @param prior to use: learnt, or {@link TrayPrior#USUAL}
 * @param batches of two or more trays
 * @param trays in them
 * @param standing what the prior rests on
 */
public record TrayHistory(TrayPrior prior, int batches, int trays, Standing standing) {

  /** With fewer trays the usual prior stays. */
  public static final int TRAYS_NEEDED = 30;

  private static final int LEAST_PER_MILLE = 10;
  private static final int GREATEST_PER_MILLE = 250;
  private static final int SHARE_POINTS = 40;
  private static final int LIKENESS_POINTS = 48;
  private static final double[] SHARE_WEIGHTS = Chebyshev.weights(SHARE_POINTS);
  private static final double[] LIKENESS_WEIGHTS = Chebyshev.weights(LIKENESS_POINTS);

  /** Flat over the angles of p and ρ. */
  private static final TrayPrior FLAT =
      new TrayPrior(new BetaPrior(0.5, 0.5), new BetaPrior(0.5, 0.5));

  /** What the prior rests on. */
  public enum Standing {
    /** Too few trays: the usual prior. */
    USUAL,
    /** The nursery's own trays. */
    LEARNT,
    /** The nursery's own trays, which would have it beyond a bound. */
    AT_A_BOUND
  }

  /** How probable a batch is at each of some angles of ρ, on any scale. */
  private record Profile(double[] angles, double[] weights) {

    double logEvidence(BetaPrior likeness) {
      double sum = 0;
      for (int i = 0; i < angles.length; i++) {
        sum += weights[i] * Math.exp(likeness.logDensityOfAngle(angles[i]));
      }
      return Math.log(sum);
    }
  }

  /**
   * @param batches the trays of each past batch
   */
  public static TrayHistory of(List<List<TrayCount>> batches) {
    List<List<TrayCount>> telling = batches.stream().filter(batch -> batch.size() > 1).toList();
    int trays = telling.stream().mapToInt(List::size).sum();
    if (trays < TRAYS_NEEDED) {
      return new TrayHistory(TrayPrior.USUAL, telling.size(), trays, Standing.USUAL);
    }
    List<Profile> profiles = telling.stream().map(TrayHistory::profile).toList();
    int best = LEAST_PER_MILLE;
    double most = Double.NEGATIVE_INFINITY;
    for (int mean = LEAST_PER_MILLE; mean <= GREATEST_PER_MILLE; mean++) {
      BetaPrior likeness = withMean(mean);
      double log = profiles.stream().mapToDouble(p -> p.logEvidence(likeness)).sum();
      if (log > most) {
        most = log;
        best = mean;
      }
    }
    boolean isBound = best == LEAST_PER_MILLE || best == GREATEST_PER_MILLE;
    return new TrayHistory(
        new TrayPrior(TrayPrior.USUAL.share(), withMean(best)),
        telling.size(),
        trays,
        isBound ? Standing.AT_A_BOUND : Standing.LEARNT);
  }

  /** The mean of ρ before a batch is counted. */
  public double meanLikeness() {
    return prior.likeness().mean();
  }

  private static BetaPrior withMean(int perMille) {
    return new BetaPrior(1, 1000.0 / perMille - 1);
  }

  private static Profile profile(List<TrayCount> batch) {
    JointDensity joint = new JointDensity(batch, FLAT);
    JointDensity.Window window = joint.window();
    double[] v = Chebyshev.points(window.shareLow(), window.shareHigh(), SHARE_POINTS);
    double[] w = Chebyshev.points(window.likenessLow(), window.likenessHigh(), LIKENESS_POINTS);
    double[][] log = joint.logOn(v, w);
    double peak = Arrays.stream(log).flatMapToDouble(Arrays::stream).max().orElseThrow();
    double[] weights = new double[LIKENESS_POINTS];
    for (int i = 0; i < LIKENESS_POINTS; i++) {
      for (int k = 0; k < SHARE_POINTS; k++) {
        weights[i] += LIKENESS_WEIGHTS[i] * SHARE_WEIGHTS[k] * Math.exp(log[i][k] - peak);
      }
    }
    return new Profile(w, weights);
  }
}
