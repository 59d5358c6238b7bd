package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * One-sided limits for the true proportion behind a plain count: "at least {@code low}" holds with
 * the level, and so does "at most {@code high}", each said alone. For a guarantee in one direction:
 * nobody minds if more root than promised.
 *
 * <p>Every method throws {@link IllegalArgumentException} if n &lt; 1, hits &lt; 0, hits &gt; n or
 * the level is not inside (0, 1).
 *
 * @param low lower limit, 0 where there are no hits
 * @param high upper limit, 1 where all are hits
 * @param level of each statement alone
 */
public record OneSidedLimit(double low, double high, double level) {

  /**
   * The score limits: the ends of Wilson's interval with z at the level itself,
   *
   * <pre>(p̂ + z²/2n ± z √(p̂(1 − p̂)/n + z²/4n²)) / (1 + z²/n)</pre>
   *
   * <p>Source: Wilson, E. B. (1927) Probable inference, the law of succession, and statistical
   * inference. Journal of the American Statistical Association 22, 209–212
   */
  public static OneSidedLimit wilson(int hits, int n, double level) {
    refuseImpossible(hits, n, level);
    double z = Quantile.of(NormalDistribution.of(0, 1), level);
    double share = (double) hits / n;
    double perUnit = z * z / n;
    double centre = share + perUnit / 2;
    double half = z * Math.sqrt(share * (1 - share) / n + perUnit / (4.0 * n));
    return new OneSidedLimit(
        hits == 0 ? 0 : (centre - half) / (1 + perUnit),
        hits == n ? 1 : (centre + half) / (1 + perUnit),
        level);
  }

  /**
   * The exact limits: the 1 − c quantile of Beta(x, n − x + 1) and the c quantile of Beta(x + 1, n
   * − x); each holds with at least the level c, whatever the truth is.
   *
   * <p>Source: Clopper, C. J. and Pearson, E. S. (1934) The use of confidence or fiducial limits
   * illustrated in the case of the binomial. Biometrika 26, 404–413
   */
  public static OneSidedLimit clopperPearson(int hits, int n, double level) {
    refuseImpossible(hits, n, level);
    return new OneSidedLimit(
        hits == 0 ? 0 : Quantile.of(BetaDistribution.of(hits, n - hits + 1.0), 1 - level),
        hits == n ? 1 : 1 - Quantile.of(BetaDistribution.of(n - hits, hits + 1.0), 1 - level),
        level);
  }

  private static void refuseImpossible(int hits, int n, double level) {
    Refuse.unless(n > 0, "A proportion needs at least one unit, not %d.", n);
    Refuse.unless(hits >= 0 && hits <= n, "%d of %d is impossible.", hits, n);
    Refuse.unlessInside(level, "level of a limit");
  }
}
