package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Refuse;

/**
 * The largest number of off-types (or losses, or culls) allowed among n plants: the smallest k with
 * Pr(X ≤ k) ≥ acceptance, X ~ Binomial(n, rate). Exact binomial, no approximation.
 *
 * <p>Source: UPOV TGP/8 Part II, the method for off-types, and TGP/10.
 *
 * @param plants n, at least 1
 * @param rate the population standard, a fraction: 0.01 for vegetatively propagated varieties
 * @param acceptance least probability of passing a lot that is exactly at the rate
 * @param allowed k
 */
public record Allowance(int plants, double rate, double acceptance, int allowed) {

  /** The usual probability of accepting a lot that is at the standard. */
  public static final double USUAL_ACCEPTANCE = 0.95;

  /** The allowance at the usual 95 %. */
  public static Allowance of(int plants, double rate) {
    return of(plants, rate, USUAL_ACCEPTANCE);
  }

  /**
   * @throws IllegalArgumentException if n &lt; 1, or rate or acceptance is not inside (0, 1)
   */
  public static Allowance of(int plants, double rate, double acceptance) {
    Refuse.unless(plants > 0, "An allowance needs at least one plant, not %d.", plants);
    Refuse.unlessInside(rate, "rate allowed");
    Refuse.unlessInside(acceptance, "probability of acceptance");
    var offTypes = BinomialDistribution.of(plants, rate);
    int k = (int) Math.floor(plants * rate);
    while (k > 0 && offTypes.cumulativeProbability(k - 1) >= acceptance) {
      k--;
    }
    while (offTypes.cumulativeProbability(k) < acceptance) {
      k++;
    }
    return new Allowance(plants, rate, acceptance, k);
  }

  /** Whether a lot with that many passes. */
  public boolean allows(int found) {
    Refuse.unless(found >= 0 && found <= plants, "%d of %d plants is impossible.", found, plants);
    return found <= allowed;
  }

  /** First error: the probability of refusing a lot that is exactly at the rate. */
  public double riskOfRefusing() {
    return BinomialDistribution.of(plants, rate).survivalProbability(allowed);
  }

  /**
   * Second error: the probability of passing a lot whose true rate is worse.
   *
   * @param trueRate a fraction, 0 to 1
   */
  public double riskOfPassing(double trueRate) {
    Refuse.unless(
        trueRate >= 0 && trueRate <= 1, "A true rate lies between 0 and 1, not at %s.", trueRate);
    return BinomialDistribution.of(plants, trueRate).cumulativeProbability(allowed);
  }
}
