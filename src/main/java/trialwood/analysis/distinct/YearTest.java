package trialwood.analysis.distinct;

import java.util.Collection;
import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * One year's difference between two varieties with its own error.
 *
 * @param difference of their means
 * @param errorOfDifference its standard error, above 0
 * @param df of the error
 */
public record YearTest(double difference, double errorOfDifference, double df) {

  private static final double LEVEL = 0.01;

  public YearTest {
    Refuse.unlessFinite(difference, "difference");
    Refuse.unless(
        errorOfDifference > 0 && Double.isFinite(errorOfDifference),
        "The standard error of a difference must be above 0, not %s.",
        errorOfDifference);
    Refuse.unless(df > 0, "Degrees of freedom must be above 0, not %s.", df);
  }

  /** Two-tailed probability of so large a difference between varieties that do not differ. */
  public double pValue() {
    return 2 * TDistribution.of(df).survivalProbability(Math.abs(difference) / errorOfDifference);
  }

  /** Whether the error has fewer degrees of freedom than the rule asks for, about 20. */
  public boolean fewDegreesOfFreedom() {
    return df < OverYears.ENOUGH_DF;
  }

  /**
   * The 2 × 1 % rule: distinct where the varieties differ in one direction at the 1 % level in at
   * least two years. Lacking with a single year.
   *
   * <p>Source: UPOV TGP/8 Part II, the 2 × 1 % method
   */
  public static Answer<Boolean> distinctInTwoYears(Collection<YearTest> years) {
    if (years.size() < 2) {
      return Answer.lacking("The 2 × 1 % rule needs two years.");
    }
    return Answer.known(clear(years, 1) >= 2 || clear(years, -1) >= 2);
  }

  private static long clear(Collection<YearTest> years, int direction) {
    return years.stream()
        .filter(year -> year.difference * direction > 0 && year.pValue() <= LEVEL)
        .count();
  }
}
