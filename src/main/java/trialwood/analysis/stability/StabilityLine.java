package trialwood.analysis.stability;

import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StraightLine;

/**
 * One entry's line on the environment index (Finlay and Wilkinson 1963), with what it misses.
 *
 * @param entry its name
 * @param line at least three points; its intercept is the entry's mean
 */
public record StabilityLine(String entry, StraightLine line) {

  public StabilityLine {
    Refuse.unless(line.points() > 2, "A line on the environments needs three of them.");
  }

  /** The entry's mean over the environments. */
  public double mean() {
    return line.intercept();
  }

  /** 1 for an entry that follows the environments as the others do. */
  public double slope() {
    return line.slope();
  }

  public double slopeError() {
    return Math.sqrt(deviation() / line.spread());
  }

  /** Two-sided probability of so distant a slope if it were 1; lacking for a line without error. */
  public Answer<Double> chanceSlopeIsOne() {
    if (line.residualSquares() == 0) {
      return Answer.lacking(entry + " lies on its line: there is no error to test the slope with.");
    }
    double t = Math.abs(slope() - 1) / slopeError();
    return Answer.known(2 * TDistribution.of(line.degreesOfFreedom()).survivalProbability(t));
  }

  /** Mean square of the deviations from the line, q − 2 df. */
  public double deviation() {
    return line.residualSquares() / line.degreesOfFreedom();
  }

  /**
   * The deviation that the error of a cell mean does not explain; may be negative.
   *
   * <p>Source: Eberhart, S. A. and Russell, W. A. (1966) Stability parameters for comparing
   * varieties. Crop Science 6, 36–40
   *
   * @param errorVariance of one plot, not negative
   * @param replicates plots behind each cell mean
   */
  public double deviationBeyondError(double errorVariance, double replicates) {
    Refuse.unless(errorVariance >= 0, "A variance cannot be negative: %s.", errorVariance);
    Refuse.unless(replicates >= 1, "A cell mean has at least one plot, not %s.", replicates);
    return deviation() - errorVariance / replicates;
  }
}
