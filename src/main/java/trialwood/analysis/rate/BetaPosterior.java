package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * What a plain count says of the true proportion: x of n with the prior Beta(a, b) leave Beta(x +
 * a, n − x + b). Every unit counts as independent; for cuttings that share a tray see {@link
 * trialwood.analysis.rate.TrayPosterior}.
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
  private static final int POINTS = 512;
  private static final double[] WEIGHTS = Chebyshev.weights(POINTS);

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
   * over the p where neither factor is settled, by quadrature in the angle u with p = low + (high −
   * low) sin² u, which takes the edge off both ends.
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
    BetaDistribution mine = distribution();
    BetaDistribution mirrored = BetaDistribution.of(b, a);
    BetaDistribution theirs = other.distribution();
    double[] angles = Chebyshev.points(0, Math.PI / 2, POINTS);
    double chance = chanceAtLeast(high);
    for (int i = 0; i < POINTS; i++) {
      double sine = Math.sin(angles[i]);
      double cosine = Math.cos(angles[i]);
      double p = low + (high - low) * sine * sine;
      double rest = 1 - high + (high - low) * cosine * cosine;
      double density = p < 0.5 ? mine.density(p) : mirrored.density(rest);
      double otherBelow = theirs.cumulativeProbability(p - margin);
      chance += WEIGHTS[i] * Math.PI * (high - low) * sine * cosine * density * otherBelow;
    }
    return Math.min(1, chance);
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
