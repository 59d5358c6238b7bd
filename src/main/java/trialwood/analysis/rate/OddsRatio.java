package trialwood.analysis.rate;

import java.util.function.DoubleUnaryOperator;
import trialwood.analysis.Answer;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * The odds of a hit in the first row over the odds in the other. An odds ratio may be 0 or
 * infinite; it is lacking where the table cannot tell (all or none are hits, in both rows).
 *
 * <p>Source: Haldane, J. B. S. (1956) The estimation and significance of the logarithm of a ratio
 * of frequencies. Annals of Human Genetics 20, 309–311; Cornfield, J. (1956) A statistical problem
 * arising from retrospective studies. Proceedings of the Third Berkeley Symposium 4, 135–148, for
 * the exact limits
 *
 * @param table the counts
 * @param sample ad / bc; infinite where only bc is 0
 * @param haldaneAnscombe the same with ½ added to each of the four counts: always finite
 * @param conditional the ψ at which the number of hits found is the number expected, margins given:
 *     the conditional maximum-likelihood estimate, to 1e-12; 0 or infinite at the ends of the range
 */
public record OddsRatio(
    FourfoldTable table,
    Answer<Double> sample,
    double haldaneAnscombe,
    Answer<Double> conditional) {

  private static final String NO_ODDS = "Both gave all or nothing: the odds cannot be compared.";

  /**
   * Exact limits: every odds ratio between them is one at which neither tail is rarer than (1 −
   * level)/2.
   *
   * @param low 0 where the first row has the fewest hits that are possible
   * @param high infinite where it has the most
   */
  public record Limits(double low, double high, double level) {}

  static OddsRatio of(FourfoldTable table) {
    double a = table.hits();
    double b = table.n() - a;
    double c = table.otherHits();
    double d = table.otherN() - c;
    Answer<Double> sample =
        a * d == 0 && b * c == 0 ? Answer.lacking(NO_ODDS) : Answer.known(a * d / (b * c));
    double haldane = (a + 0.5) * (d + 0.5) / ((b + 0.5) * (c + 0.5));
    return new OddsRatio(table, sample, haldane, conditional(table));
  }

  /**
   * Lacking where the margins leave one table only.
   *
   * @throws IllegalArgumentException if the level is not inside (0, 1)
   */
  public Answer<Limits> exact(double level) {
    Refuse.unlessInside(level, "level of the limits");
    int hits = table.hits();
    int least = FourfoldLaw.least(table);
    int most = FourfoldLaw.most(table);
    if (least == most) {
      return Answer.lacking(NO_ODDS);
    }
    double tail = (1 - level) / 2;
    double low = hits == least ? 0 : oddsAt(log -> table.law(log).chanceOfAtLeast(hits), tail);
    double high =
        hits == most
            ? Double.POSITIVE_INFINITY
            : oddsAt(log -> -table.law(log).chanceOfAtMost(hits), -tail);
    return Answer.known(new Limits(low, high, level));
  }

  private static Answer<Double> conditional(FourfoldTable table) {
    int least = FourfoldLaw.least(table);
    int most = FourfoldLaw.most(table);
    if (least == most) {
      return Answer.lacking(NO_ODDS);
    }
    if (table.hits() == least) {
      return Answer.known(0.0);
    }
    return Answer.known(
        table.hits() == most
            ? Double.POSITIVE_INFINITY
            : oddsAt(log -> table.law(log).mean(), table.hits()));
  }

  /** Solves for log ψ, where {@code rising} grows with log ψ. */
  private static double oddsAt(DoubleUnaryOperator rising, double wanted) {
    double step = 1;
    double low = 0;
    double high = 0;
    while (rising.applyAsDouble(low) > wanted) {
      low -= step *= 2;
    }
    while (rising.applyAsDouble(high) < wanted) {
      high += step *= 2;
    }
    return Math.exp(Quantile.solve(rising, low, high, wanted));
  }
}
