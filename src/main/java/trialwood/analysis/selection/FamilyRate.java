package trialwood.analysis.selection;

import org.apache.commons.statistics.distribution.BetaDistribution;
import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;
import trialwood.analysis.rate.BetaPrior;

/**
 * What is believed of one family's true rate: Beta(hits + a, misses + b), with a and b what the
 * other families say of families. Its mean lies between the family's own share and the mean of all.
 *
 * @param count the family's own
 * @param prior Beta(a, b)
 */
public record FamilyRate(FamilyCount count, BetaPrior prior) implements Belief {

  @Override
  public double mean() {
    return (count.hits() + prior.a()) / (count.seedlings() + prior.a() + prior.b());
  }

  @Override
  public double chanceAtLeast(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    return line >= 1 ? 0 : line <= 0 ? 1 : posterior().survivalProbability(line);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return Quantile.of(posterior(), probability);
  }

  private BetaDistribution posterior() {
    return BetaDistribution.of(
        count.hits() + prior.a(), count.seedlings() - count.hits() + prior.b());
  }
}
