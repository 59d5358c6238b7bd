package trialwood.analysis.means;

import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * An analysis of variance: one line a term that has degrees of freedom, each tested against the
 * residual.
 *
 * @param lines in the order of the model
 * @param residualDf at least 1
 * @param residualSs above 0, in the squared unit of the trait
 */
public record AnovaTable(List<Line> lines, int residualDf, double residualSs) {

  /**
   * One term.
   *
   * @param term as named in the model
   * @param df degrees of freedom
   * @param ss sum of squares, in the squared unit of the trait
   * @param f mean square over residual mean square
   * @param p chance of such an F or a greater one if the term did nothing
   */
  public record Line(String term, int df, double ss, double f, double p) {

    /** Mean square. */
    public double ms() {
      return ss / df;
    }

    static Line of(String term, int df, double ss, int residualDf, double residualSs) {
      double f = ss / df / (residualSs / residualDf);
      return new Line(term, df, ss, f, FDistribution.of(df, residualDf).survivalProbability(f));
    }
  }

  public AnovaTable {
    lines = List.copyOf(lines);
  }

  /** Residual mean square: the variance of a plot. */
  public double residualMs() {
    return residualSs / residualDf;
  }

  /**
   * @throws IllegalArgumentException if the table has no such line
   */
  public Line line(String term) {
    return lines.stream()
        .filter(line -> line.term().equals(term))
        .findAny()
        .orElseThrow(() -> new IllegalArgumentException("The table has no line " + term + "."));
  }
}
