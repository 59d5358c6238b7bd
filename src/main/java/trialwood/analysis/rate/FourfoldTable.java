package trialwood.analysis.rate;

import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Interval;
import trialwood.analysis.Refuse;

/**
 * Two plain counts side by side: {@code hits} of {@code n}, and {@code otherHits} of {@code
 * otherN}, every unit independent of the others. The difference is the first less the other. For
 * cuttings in trays see {@link trialwood.analysis.rate.RateDifference}.
 *
 * @param hits 0 to n
 * @param n at least 1
 * @param otherHits 0 to otherN
 * @param otherN at least 1; both together at most 2³¹ − 1
 */
public record FourfoldTable(int hits, int n, int otherHits, int otherN) {

  public FourfoldTable {
    Refuse.unless(n > 0 && otherN > 0, "Each proportion needs at least one unit.");
    Refuse.unless(hits >= 0 && hits <= n, "%d of %d is impossible.", hits, n);
    Refuse.unless(
        otherHits >= 0 && otherHits <= otherN, "%d of %d is impossible.", otherHits, otherN);
    Refuse.unless(
        (long) n + otherN <= Integer.MAX_VALUE, "%d and %d units are too many.", n, otherN);
  }

  public double share() {
    return (double) hits / n;
  }

  public double otherShare() {
    return (double) otherHits / otherN;
  }

  public double difference() {
    return share() - otherShare();
  }

  /**
   * The hybrid score interval of the difference: with Wilson limits l, u and l′, u′ of the two
   * shares it runs from d − √((p̂ − l)² + (u′ − p̂′)²) to d + √((u − p̂)² + (p̂′ − l′)²).
   *
   * <p>Source: Newcombe, R. G. (1998) Interval estimation for the difference between independent
   * proportions. Statistics in Medicine 17, 873–890, method 10
   *
   * @throws IllegalArgumentException if the level is not inside (0, 1)
   */
  public Interval newcombe(double level) {
    Interval mine = BinomialInterval.wilson(hits, n, level);
    Interval other = BinomialInterval.wilson(otherHits, otherN, level);
    double down = Math.hypot(share() - mine.low(), other.high() - otherShare());
    double up = Math.hypot(mine.high() - share(), otherShare() - other.low());
    return new Interval(difference() - down, difference() + up, level);
  }

  /**
   * Pearson's chi-square on one degree of freedom, without correction for continuity: N(ad − bc)² /
   * (product of the four margins). Lacking if all or none are hits.
   *
   * <p>Source: Pearson, K. (1900) Philosophical Magazine 50, 157–175
   */
  public Answer<ChiSquareTest> pearson() {
    double all = (double) n + otherN;
    double allHits = (double) hits + otherHits;
    if (allHits == 0 || allHits == all) {
      return Answer.lacking("Both gave all or nothing: there is no difference to test.");
    }
    double cross = (double) hits * (otherN - otherHits) - (double) otherHits * (n - hits);
    return Answer.known(
        ChiSquareTest.of(all * cross / n / otherN * cross / allHits / (all - allHits), 1));
  }

  public FisherTest fisher() {
    return FisherTest.of(this);
  }

  public OddsRatio oddsRatio() {
    return OddsRatio.of(this);
  }

  /** How likely each number of hits is, all four margins given. */
  FourfoldLaw law(double logOdds) {
    return FourfoldLaw.of(this, logOdds);
  }
}
