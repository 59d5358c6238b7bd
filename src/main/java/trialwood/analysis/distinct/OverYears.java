package trialwood.analysis.distinct;

import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;
import trialwood.analysis.TwoWayTable;

/**
 * Combined over-years distinctness (COYD) of a measured characteristic: two varieties are distinct
 * where their means over the years differ by at least
 *
 * <pre>LSD = t √2 √(MS/k)</pre>
 *
 * with MS the varieties × years mean square, k years of test and t two-tailed on the degrees of
 * freedom of MS. The mean square may come from this table, from a longer row of years, or, where
 * the years only stretch or shrink all differences, from what is left after a slope for each year
 * ({@link YearSlopes}).
 *
 * <p>Source: UPOV TGP/8 Part II, Combined over-years criteria for distinctness; Patterson, H. D.
 * and Weatherup, S. T. C. (1984) Statistical criteria for distinctness between varieties of herbage
 * crops. Journal of Agricultural Science 102, 59–68
 *
 * @param table variety × year means, the years of test
 * @param meanSquare varieties × years
 * @param df of the mean square
 */
public record OverYears(TwoWayTable table, double meanSquare, double df) {

  /** Fewer degrees of freedom than about this and the long-term form is asked for. */
  public static final int ENOUGH_DF = 20;

  /** The level that is commonly used. */
  public static final double USUAL_LEVEL = 0.01;

  public OverYears {
    Refuse.unless(
        meanSquare > 0 && Double.isFinite(meanSquare),
        "A mean square must be above 0, not %s.",
        meanSquare);
    Refuse.unless(df > 0, "Degrees of freedom must be above 0, not %s.", df);
  }

  /**
   * The criterion from the years of test alone; lacking where no variety varies from year to year.
   */
  public static Answer<OverYears> of(TwoWayTable table) {
    double meanSquare = table.interactionSquares() / table.interactionDf();
    return meanSquare > 0
        ? Answer.known(new OverYears(table, meanSquare, table.interactionDf()))
        : Answer.lacking("All varieties keep the same differences: nothing to judge the error by.");
  }

  /**
   * The long-term form: the years of test with the varieties × years mean square of the years
   * before.
   */
  public static OverYears longTerm(TwoWayTable table, double meanSquare, double df) {
    return new OverYears(table, meanSquare, df);
  }

  /** Whether the degrees of freedom are fewer than about 20: use the long-term form. */
  public boolean fewDegreesOfFreedom() {
    return df < ENOUGH_DF;
  }

  /**
   * The least difference of two means over the years that counts as distinct.
   *
   * @param level two-tailed probability, inside (0, 1)
   */
  public double leastDifference(double level) {
    Refuse.unlessInside(level, "level of a test");
    double t = Quantile.of(TDistribution.of(df), 1 - level / 2);
    return t * Math.sqrt(2 * meanSquare / table.columns().size());
  }

  /** Mean of one variety over the years less that of the other. */
  public double difference(String variety, String other) {
    return table.rowMean(table.rowOf(variety)) - table.rowMean(table.rowOf(other));
  }

  public boolean distinct(String variety, String other, double level) {
    return Math.abs(difference(variety, other)) >= leastDifference(level);
  }

  /** Two-tailed probability of so large a difference between varieties that do not differ. */
  public double pValue(String variety, String other) {
    double t = Math.abs(difference(variety, other));
    t /= Math.sqrt(2 * meanSquare / table.columns().size());
    return 2 * TDistribution.of(df).survivalProbability(t);
  }
}
