package trialwood.analysis.distinct;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.TwoWayTable;

/**
 * Modified joint regression of a variety × year table: years that stretch or shrink all differences
 * between varieties. In each year the variety means are regressed on their means over the years;
 * the k slopes average 1. What they explain of the varieties × years squares,
 *
 * <pre>Σ_j (slope_j − 1)² Σ_i (variety effect_i)²,  k − 1 df</pre>
 *
 * is compared with what they leave, on (k − 1)(v − 2) df for v varieties.
 *
 * <p>Source: UPOV TGP/8 Part II, Combined over-years criteria for distinctness, the section on
 * modified joint regression analysis
 *
 * @param table the table itself
 * @param slopes one a year, in the order of the table
 * @param slopeMeanSquare of the slopes
 * @param slopeDf k − 1
 * @param remainder mean square of what the slopes leave, above 0
 * @param remainderDf (k − 1)(v − 2)
 */
public record YearSlopes(
    TwoWayTable table,
    List<Double> slopes,
    double slopeMeanSquare,
    int slopeDf,
    double remainder,
    int remainderDf) {

  private static final double ROUNDING = 1e-12;

  public YearSlopes {
    slopes = List.copyOf(slopes);
  }

  /** Lacking with two varieties, or where they do not differ or do so without any error. */
  public static Answer<YearSlopes> of(TwoWayTable table) {
    int varieties = table.rows().size();
    int years = table.columns().size();
    double spread = table.rowSquares() / years;
    if (varieties < 3 || !(spread > 0)) {
      return Answer.lacking("Slopes of years need three varieties that differ.");
    }
    var slopes = new ArrayList<Double>();
    double squares = 0;
    for (int j = 0; j < years; j++) {
      double off = 0;
      for (int i = 0; i < varieties; i++) {
        off += table.interaction(i, j) * (table.rowMean(i) - table.grandMean()) / spread;
      }
      slopes.add(1 + off);
      squares += off * off * spread;
    }
    int slopeDf = years - 1;
    int remainderDf = slopeDf * (varieties - 2);
    double remainder = (table.interactionSquares() - squares) / remainderDf;
    return remainder > ROUNDING * table.interactionSquares()
        ? Answer.known(
            new YearSlopes(table, slopes, squares / slopeDf, slopeDf, remainder, remainderDf))
        : Answer.lacking("The slopes of the years leave nothing to judge the error by.");
  }

  /** F₃: the slopes' mean square over the remainder. */
  public double f() {
    return slopeMeanSquare / remainder;
  }

  /** Probability of so large an F₃ if no year stretched or shrank the differences. */
  public double pValue() {
    return FDistribution.of(slopeDf, remainderDf).survivalProbability(f());
  }

  /**
   * The criterion to use: with the remainder where the slopes differ at the level, else without.
   */
  public Answer<OverYears> criterion(double level) {
    return pValue() <= level
        ? Answer.known(new OverYears(table, remainder, remainderDf))
        : OverYears.of(table);
  }
}
