package trialwood.analysis.means;

import trialwood.analysis.Answer;
import trialwood.analysis.Belief;
import trialwood.analysis.StudentBelief;

/**
 * The difference of two lots' true means, candidate − check, from plants that grew side by side:
 * Student's two-sample method with one common variance,
 *
 * <pre>s² = ((n₁ − 1)s₁² + (n₂ − 1)s₂²)/(n₁ + n₂ − 2),  se = s √(1/n₁ + 1/n₂),  df = n₁ + n₂ − 2
 * </pre>
 *
 * The plant is the unit here, so a bench or yard effect that hit one whole lot is not in the
 * interval.
 *
 * <p>Source: Fisher, R. A. (1925) Applications of "Student's" distribution. Metron 5, 90–104
 *
 * @param candidate its plants
 * @param check the check's plants
 * @param pooledSd s, in the unit of the trait
 * @param difference mean difference with standard error and degrees of freedom
 */
public record SampleDifference(
    PlantSample candidate, PlantSample check, double pooledSd, StudentBelief difference)
    implements Belief {

  /** Lacking unless both lots have at least two plants. */
  public static Answer<SampleDifference> between(PlantSample candidate, PlantSample check) {
    if (!(candidate.sd() instanceof Answer.Known<Double> one)
        || !(check.sd() instanceof Answer.Known<Double> other)) {
      return Answer.lacking("A difference needs at least two plants of each.");
    }
    int df = candidate.n() + check.n() - 2;
    double squares =
        (candidate.n() - 1) * one.answer() * one.answer()
            + (check.n() - 1) * other.answer() * other.answer();
    double sd = Math.sqrt(squares / df);
    double se = sd * Math.sqrt(1.0 / candidate.n() + 1.0 / check.n());
    return Answer.known(
        new SampleDifference(
            candidate, check, sd, new StudentBelief(candidate.mean() - check.mean(), se, df)));
  }

  @Override
  public double mean() {
    return difference.mean();
  }

  @Override
  public double chanceAtLeast(double line) {
    return difference.chanceAtLeast(line);
  }

  @Override
  public double quantile(double probability) {
    return difference.quantile(probability);
  }
}
