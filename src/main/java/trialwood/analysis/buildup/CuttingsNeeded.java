package trialwood.analysis.buildup;

import java.util.function.IntToDoubleFunction;
import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * The smallest number of cuttings of which at least {@code need} root with the confidence wanted.
 * Sticking only as many as are expected to suffice fails about every other time.
 *
 * @param need rooted plants wanted, at least 1
 * @param confidence wanted, inside (0, 1)
 * @param cuttings the answer
 * @param chance Pr(rooted ≥ need) with that many, not below the confidence
 * @param expectedOnly cuttings that suffice on average, need ÷ rate
 */
public record CuttingsNeeded(
    int need, double confidence, int cuttings, double chance, int expectedOnly) {

  private static final int MOST = 10_000_000;
  private static final double LARGE = 1e200;

  /**
   * With a known rate: rooted ~ Binomial(cuttings, rate). Lacking beyond ten million.
   *
   * @param rate above 0, at most 1
   */
  public static Answer<CuttingsNeeded> atRate(int need, double rate, double confidence) {
    Refuse.unless(rate > 0 && rate <= 1, "A rooting rate lies above 0 and up to 1: %s.", rate);
    return search(
        need,
        confidence,
        rate,
        cuttings -> BinomialDistribution.of(cuttings, rate).survivalProbability(need - 1));
  }

  /**
   * With the rate known from one earlier trial of independent cuttings: rooted ~ beta-binomial with
   * the posterior Beta(rooted + ½, stuck − rooted + ½). Lacking beyond ten million.
   *
   * <p>Source: Skellam, J. G. (1948) Journal of the Royal Statistical Society B 10, 257–261
   */
  public static Answer<CuttingsNeeded> afterTrial(
      int need, int rooted, int stuck, double confidence) {
    Refuse.unless(stuck > 0, "A trial has at least one cutting, not %d.", stuck);
    Refuse.unless(rooted >= 0 && rooted <= stuck, "%d of %d is impossible.", rooted, stuck);
    double a = rooted + 0.5;
    double b = stuck - rooted + 0.5;
    return search(need, confidence, a / (a + b), cuttings -> 1 - below(need, cuttings, a, b));
  }

  /** Doubles until the chance suffices, then halves the gap: the chance never falls. */
  private static Answer<CuttingsNeeded> search(
      int need, double confidence, double rate, IntToDoubleFunction chance) {
    Refuse.unless(need > 0, "At least one rooted plant must be wanted, not %d.", need);
    Refuse.unlessInside(confidence, "confidence wanted");
    double expected = Math.ceil(need / rate - 1e-9);
    int enough = need;
    int few = need - 1;
    while (enough <= MOST && chance.applyAsDouble(enough) < confidence) {
      few = enough;
      enough *= 2;
    }
    if (enough > MOST || expected > MOST) {
      return Answer.lacking("More than ten million cuttings would be needed.");
    }
    while (enough - few > 1) {
      int middle = few + (enough - few) / 2;
      if (chance.applyAsDouble(middle) < confidence) {
        few = middle;
      } else {
        enough = middle;
      }
    }
    return Answer.known(
        new CuttingsNeeded(need, confidence, enough, chance.applyAsDouble(enough), (int) expected));
  }

  /** Pr(rooted &lt; need), from the term of need − 1 down, kept in scale. */
  private static double below(int need, int cuttings, double a, double b) {
    int x = need - 1;
    double logScale =
        LogBeta.value(x + a, cuttings - x + b)
            - LogBeta.value(a, b)
            - LogBeta.value(x + 1.0, cuttings - x + 1.0)
            - Math.log(cuttings + 1.0);
    double term = 1;
    double sum = 0;
    for (; x >= 0; x--) {
      sum += term;
      term *= x * (cuttings - x + b) / ((cuttings - x + 1.0) * (x - 1 + a));
      if (sum > LARGE) {
        sum /= LARGE;
        term /= LARGE;
        logScale += Math.log(LARGE);
      }
    }
    return Math.min(1, Math.exp(logScale + Math.log(sum)));
  }
}
