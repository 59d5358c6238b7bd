package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Interval;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * Intervals for the true proportion behind a plain count: {@code hits} of {@code n}, every unit
 * independent of the others. Cuttings that share a tray are not; for them see {@link
 * TrayPosterior}.
 *
 * <p>For a promise in one direction see {@link trialwood.analysis.rate.OneSidedLimit}.
 *
 * <p>Every method throws {@link IllegalArgumentException} if n &lt; 1, hits &lt; 0, hits &gt; n or
 * the level is not inside (0, 1).
 */
public final class BinomialInterval {

  private BinomialInterval() {}

  /**
   * The score interval: all p that a score test at the level does not reject,
   *
   * <pre>(p̂ + z²/2n ± z √(p̂(1 − p̂)/n + z²/4n²)) / (1 + z²/n)</pre>
   *
   * Good average coverage; for display. Starts at exactly 0 for no hits, ends at exactly 1 for n.
   *
   * <p>Source: Wilson, E. B. (1927) Probable inference, the law of succession, and statistical
   * inference. Journal of the American Statistical Association 22, 209–212
   */
  public static Interval wilson(int hits, int n, double level) {
    refuseImpossible(hits, n, level);
    double z = Quantile.of(NormalDistribution.of(0, 1), (1 + level) / 2);
    double share = (double) hits / n;
    double perUnit = z * z / n;
    double centre = share + perUnit / 2;
    double half = z * Math.sqrt(share * (1 - share) / n + perUnit / (4.0 * n));
    double low = hits == 0 ? 0 : (centre - half) / (1 + perUnit);
    double high = hits == n ? 1 : (centre + half) / (1 + perUnit);
    return new Interval(low, high, level);
  }

  /**
   * The exact interval: covers the truth with at least the level, whatever the truth is. Its ends
   * are the α/2 quantile of Beta(x, n − x + 1) and the 1 − α/2 quantile of Beta(x + 1, n − x); for
   * a guarantee.
   *
   * <p>Source: Clopper, C. J. and Pearson, E. S. (1934) The use of confidence or fiducial limits
   * illustrated in the case of the binomial. Biometrika 26, 404–413
   */
  public static Interval clopperPearson(int hits, int n, double level) {
    refuseImpossible(hits, n, level);
    double tail = (1 - level) / 2;
    double low = hits == 0 ? 0 : Quantile.of(BetaDistribution.of(hits, n - hits + 1), tail);
    double high = hits == n ? 1 : upper(BetaDistribution.of(n - hits, hits + 1), tail);
    return new Interval(low, high, level);
  }

  /**
   * The central interval of the posterior Beta(x + ½, n − x + ½), with the lower end put to 0 for
   * no hits and the upper to 1 for n of n.
   *
   * <p>Source: Brown, L. D., Cai, T. T. and DasGupta, A. (2001) Interval estimation for a binomial
   * proportion. Statistical Science 16, 101–133
   */
  public static Interval jeffreys(int hits, int n, double level) {
    refuseImpossible(hits, n, level);
    double tail = (1 - level) / 2;
    double low = hits == 0 ? 0 : Quantile.of(BetaDistribution.of(hits + 0.5, n - hits + 0.5), tail);
    double high = hits == n ? 1 : upper(BetaDistribution.of(n - hits + 0.5, hits + 0.5), tail);
    return new Interval(low, high, level);
  }

  /** An upper end, taken from the mirror image so that no digits are lost near 1. */
  private static double upper(BetaDistribution mirrored, double tail) {
    return 1 - Quantile.of(mirrored, tail);
  }

  private static void refuseImpossible(int hits, int n, double level) {
    Refuse.unless(n > 0, "A proportion needs at least one unit, not %d.", n);
    Refuse.unless(hits >= 0 && hits <= n, "%d of %d is impossible.", hits, n);
    Refuse.unlessInside(level, "level of an interval");
  }
}
