package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * The share rooted by each day, as far as looks can tell: the non-parametric maximum-likelihood
 * estimate for times known only to lie in (after, by]. All probability lies on the innermost
 * intervals, those from a lower end to the next upper end with no other end between; where within
 * them, nobody can say.
 *
 * <p>Source: Turnbull, B. W. (1976) The empirical distribution function with arbitrarily grouped,
 * censored and truncated data. Journal of the Royal Statistical Society B 38, 290–295
 *
 * @param masses in order of days, their shares adding up to 1; one that ends at infinity never
 *     roots as far as was looked
 * @param logLikelihood Σ log of the probability of each cutting's interval
 * @param shortfall how far the Kuhn–Tucker conditions are missed: no other curve has a
 *     log-likelihood higher by more than this times the number of cuttings
 * @param cuttings all that were looked at
 */
public record RootingCurve(
    List<Mass> masses, double logLikelihood, double shortfall, long cuttings) {

  /** Shares that differ by less count as equal. */
  private static final double SAME = 1e-9;

  /**
   * The share that rooted within (after, by].
   *
   * @param by may be infinite
   */
  public record Mass(double after, double by, double share) {}

  /**
   * The day by which a share had rooted lies in (after, by].
   *
   * @param by infinite if the share was not reached by the last look
   */
  public record Day(double after, double by) {

    public boolean reached() {
      return Double.isFinite(by);
    }
  }

  /** An end of an interval; at one day upper ends, which include it, come before lower ends. */
  private record End(double day, boolean lower) {}

  /** Lacking if nobody has looked, or the fit does not settle. */
  public static Answer<RootingCurve> of(List<RootedBetween> looks) {
    if (looks.isEmpty()) {
      return Answer.lacking("Nobody has looked.");
    }
    List<Mass> innermost = innermost(looks);
    int m = innermost.size();
    double[] weights = looks.stream().mapToDouble(RootedBetween::cuttings).toArray();
    boolean[][] covers = new boolean[looks.size()][m];
    for (int i = 0; i < looks.size(); i++) {
      for (int j = 0; j < m; j++) {
        covers[i][j] =
            looks.get(i).after() <= innermost.get(j).after()
                && innermost.get(j).by() <= looks.get(i).by();
      }
    }
    return new MixtureWeights(weights, covers).best() instanceof Answer.Known<MixtureWeights.Best> f
        ? Answer.known(curve(looks, innermost, f.answer()))
        : Answer.lacking("The curve did not settle.");
  }

  /** The share not yet rooted after a day; inside an innermost interval, the share at its start. */
  public double notRootedAfter(double day) {
    Refuse.unless(!Double.isNaN(day), "The day must be a number.");
    return masses.stream().filter(mass -> mass.by() > day).mapToDouble(Mass::share).sum();
  }

  /** The share rooted by a day: 1 less {@link #notRootedAfter}. */
  public double rootedBy(double day) {
    Refuse.unless(!Double.isNaN(day), "The day must be a number.");
    return masses.stream().filter(mass -> mass.by() <= day).mapToDouble(Mass::share).sum();
  }

  /**
   * The interval in which the rooted share reached {@code share}, of all that were looked at.
   *
   * @throws IllegalArgumentException if the share is outside (0, 1]
   */
  public Day dayOf(double share) {
    Refuse.unless(share > 0 && share <= 1, "A share lies above 0 and up to 1, not at %s.", share);
    double rooted = 0;
    for (Mass mass : masses) {
      rooted += mass.share();
      if (rooted >= share - SAME) {
        return new Day(mass.after(), mass.by());
      }
    }
    Mass last = masses.get(masses.size() - 1);
    return new Day(last.after(), last.by());
  }

  private static List<Mass> innermost(List<RootedBetween> looks) {
    var ends = new ArrayList<End>();
    for (RootedBetween look : looks) {
      ends.add(new End(look.after(), true));
      ends.add(new End(look.by(), false));
    }
    ends.sort(Comparator.comparingDouble(End::day).thenComparing(End::lower));
    var innermost = new ArrayList<Mass>();
    for (int i = 1; i < ends.size(); i++) {
      if (ends.get(i - 1).lower() && !ends.get(i).lower()) {
        innermost.add(new Mass(ends.get(i - 1).day(), ends.get(i).day(), 0));
      }
    }
    return innermost;
  }

  private static RootingCurve curve(
      List<RootedBetween> looks, List<Mass> innermost, MixtureWeights.Best best) {
    var masses = new ArrayList<Mass>();
    for (int j = 0; j < innermost.size(); j++) {
      if (best.weights()[j] > 0) {
        masses.add(new Mass(innermost.get(j).after(), innermost.get(j).by(), best.weights()[j]));
      }
    }
    return new RootingCurve(
        List.copyOf(masses),
        best.logLikelihood(),
        best.shortfall(),
        looks.stream().mapToLong(RootedBetween::cuttings).sum());
  }
}
