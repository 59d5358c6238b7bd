package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import trialwood.analysis.Belief;
import trialwood.analysis.BetaPrior;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * What a plain count says of the true proportion: x of n with the prior Beta(a, b) leave Beta(x +
 * a, n − x + b). Every unit counts as independent; for cuttings that share a tray see {@link
 * trialwood.analysis.TrayPosterior}.
 *
 * <p>Source: Bayes, T. (1763) An essay towards solving a problem in the doctrine of chances.
 * Philosophical Transactions 53, 370–418; the prior Beta(½, ½) after Jeffreys, H. (1946)
 * Proceedings of the Royal Society A 186, 453–461
 *
 * @param a weight of the successes, above 0
 * @param b weight of the failures, above 0
 */
public record BetaPosterior(double a, double b) implements Belief {

  private static final BetaPrior JEFFREYS = new BetaPrior(0.5, 0.5);
  private static final int FEWEST_POINTS = 64;
  private static final int MOST_POINTS = 8192;

  /** What lies beyond counts for nothing. */
  private static final double NEGLIGIBLE = 1e-13;

  private static final double TINY = 1e-8;

  public BetaPosterior {
    Refuse.unless(
        a > 0 && b > 0 && Double.isFinite(a) && Double.isFinite(b),
        "The weights of a belief must be positive numbers, not %s and %s.",
        a,
        b);
  }

  /** After a plain count, with the prior Beta(½, ½). */
  public static BetaPosterior of(int hits, int n) {
    return of(hits, n, JEFFREYS);
  }

  /**
   * @throws IllegalArgumentException if n or hits is negative or hits &gt; n
   */
  public static BetaPosterior of(int hits, int n, BetaPrior prior) {
    Refuse.unless(hits >= 0 && hits <= n, "%d of %d is impossible.", hits, n);
    return new BetaPosterior(hits + prior.a(), n - hits + prior.b());
  }

  @Override
  public double mean() {
    return a / (a + b);
  }

  @Override
  public double chanceAtLeast(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    return distribution().survivalProbability(line);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return probability <= 0.5
        ? Quantile.of(distribution(), probability)
        : 1 - Quantile.of(BetaDistribution.of(b, a), 1 - probability);
  }

  /**
   * Pr(p − p_other &gt; margin) for two independent counts: ∫ f(p) Pr(p_other &lt; p − margin) dp
   * over the p where neither factor is settled, with p = low + (high − low) sin² u, which takes the
   * edge off both ends; the midpoint rule in u doubles its points until two sums agree to 1e-12.
   *
   * @param margin in fractions of 1
   */
  public double chanceAheadOf(BetaPosterior other, double margin) {
    Refuse.unlessFinite(margin, "margin");
    double low = Math.max(least(), other.least() + margin);
    double settled = other.most() + margin;
    double high = Math.min(most(), settled);
    if (low >= high) {
      return chanceAtLeast(settled);
    }
    double last = Double.NaN;
    double sum = midpoints(other, margin, low, high, FEWEST_POINTS);
    for (int points = 2 * FEWEST_POINTS;
        points <= MOST_POINTS && !(Math.abs(sum - last) < 1e-12);
        points *= 2) {
      last = sum;
      sum = midpoints(other, margin, low, high, points);
    }
    return Math.min(1, sum + chanceAtLeast(high));
  }

  private double midpoints(
      BetaPosterior other, double margin, double low, double high, int points) {
    BetaDistribution mine = distribution();
    BetaDistribution mirrored = BetaDistribution.of(b, a);
    BetaDistribution theirs = other.distribution();
    double sum = 0;
    for (int i = 0; i < points; i++) {
      double u = Math.PI / 2 * (i + 0.5) / points;
      double p = low + (high - low) * Math.sin(u) * Math.sin(u);
      double rest = 1 - high + (high - low) * Math.cos(u) * Math.cos(u);
      double density = p < 0.5 ? mine.density(p) : mirrored.density(rest);
      sum += density * theirs.cumulativeProbability(p - margin) * Math.sin(2 * u);
    }
    return sum * (high - low) * Math.PI / 2 / points;
  }

  /** Below it lies next to nothing; 0 rather than a quantile too small to be found. */
  private double least() {
    double quantile = quantile(NEGLIGIBLE);
    return quantile < TINY ? 0 : quantile;
  }

  private double most() {
    double quantile = quantile(1 - NEGLIGIBLE);
    return 1 - quantile < TINY ? 1 : quantile;
  }

  private BetaDistribution distribution() {
    return BetaDistribution.of(a, b);
  }
}
