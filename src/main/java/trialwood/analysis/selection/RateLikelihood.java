package trialwood.analysis.selection;

import java.util.List;
import org.apache.commons.numbers.gamma.Digamma;
import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.numbers.gamma.Trigamma;
import trialwood.analysis.Answer;
import trialwood.analysis.rate.BetaPrior;

/**
 * The log likelihood of beta-binomial counts, climbed in (log a, log b) by Newton's steps that are
 * halved until they climb, and turned uphill where the surface is not concave.
 */
record RateLikelihood(List<FamilyCount> counts) {

  private static final int STEPS = 200;
  private static final double SETTLED = 1e-11;

  /** Beyond this a + b families are as good as alike. */
  private static final double ALIKE = 1e5;

  /** Below this a + b every family is as good as all of one kind. */
  private static final double UNLIKE = 1e-5;

  double logOf(BetaPrior prior) {
    double prior0 = LogBeta.value(prior.a(), prior.b());
    double sum = 0;
    for (FamilyCount count : counts) {
      int misses = count.seedlings() - count.hits();
      sum +=
          LogBeta.value(count.hits() + prior.a(), misses + prior.b())
              - prior0
              - LogBeta.value(count.hits() + 1.0, misses + 1.0)
              - Math.log(count.seedlings() + 1.0);
    }
    return sum;
  }

  /** The weights of the highest likelihood; lacking where it rises without end. */
  Answer<BetaPrior> best() {
    double hits = counts.stream().mapToDouble(FamilyCount::hits).sum();
    double seedlings = counts.stream().mapToDouble(FamilyCount::seedlings).sum();
    double share = hits / seedlings;
    BetaPrior at = new BetaPrior(10 * share, 10 * (1 - share));
    double height = logOf(at);
    for (int step = 0; step < STEPS; step++) {
      double[] move = move(at);
      double length = Math.hypot(move[0], move[1]);
      double shrink = length > 2 ? 2 / length : 1;
      BetaPrior next = moved(at, move, shrink);
      while (logOf(next) < height && shrink * length > SETTLED) {
        shrink /= 2;
        next = moved(at, move, shrink);
      }
      if (next.a() + next.b() > ALIKE) {
        return Answer.lacking(FamilyRates.ALIKE);
      }
      if (next.a() + next.b() < UNLIKE) {
        return Answer.lacking(FamilyRates.UNLIKE);
      }
      double higher = logOf(next);
      at = higher >= height ? next : at;
      height = Math.max(height, higher);
      if (shrink * length < SETTLED) {
        return Answer.known(at);
      }
    }
    return Answer.lacking("The rates of the families did not settle.");
  }

  /** Newton's step in (log a, log b), or the gradient where that would not climb. */
  private double[] move(BetaPrior at) {
    double a = at.a();
    double b = at.b();
    double da = 0;
    double db = 0;
    double daa = 0;
    double dbb = 0;
    double dab = 0;
    for (FamilyCount count : counts) {
      int misses = count.seedlings() - count.hits();
      double both = Digamma.value(a + b) - Digamma.value(a + b + count.seedlings());
      double curve = Trigamma.value(a + b) - Trigamma.value(a + b + count.seedlings());
      da += Digamma.value(a + count.hits()) - Digamma.value(a) + both;
      db += Digamma.value(b + misses) - Digamma.value(b) + both;
      daa += Trigamma.value(a + count.hits()) - Trigamma.value(a) + curve;
      dbb += Trigamma.value(b + misses) - Trigamma.value(b) + curve;
      dab += curve;
    }
    double ga = a * da;
    double gb = b * db;
    double haa = a * a * daa + ga;
    double hbb = b * b * dbb + gb;
    double hab = a * b * dab;
    double determinant = haa * hbb - hab * hab;
    return haa < 0 && determinant > 0
        ? new double[] {-(hbb * ga - hab * gb) / determinant, -(haa * gb - hab * ga) / determinant}
        : new double[] {ga, gb};
  }

  private static BetaPrior moved(BetaPrior at, double[] move, double shrink) {
    return new BetaPrior(at.a() * Math.exp(shrink * move[0]), at.b() * Math.exp(shrink * move[1]));
  }
}
