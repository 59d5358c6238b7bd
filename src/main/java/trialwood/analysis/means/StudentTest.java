package trialwood.analysis.means;

import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;

/** How far an estimate lies from 0, in its standard errors. */
final class StudentTest {

  private StudentTest() {}

  /** Estimate over standard error. */
  static double t(StudentBelief belief) {
    return belief.estimate() / belief.standardError();
  }

  /** The estimate give or take so many of its standard errors. */
  static Interval around(StudentBelief belief, double times, double level) {
    double half = times * belief.standardError();
    return new Interval(belief.estimate() - half, belief.estimate() + half, level);
  }

  /** Chance of a t as far from 0 as this one, on either side, if the truth is 0. */
  static double p(StudentBelief belief) {
    return Math.min(
        1,
        2 * TDistribution.of(belief.degreesOfFreedom()).survivalProbability(Math.abs(t(belief))));
  }
}
