package trialwood.analysis.stability;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.FDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StraightLine;
import trialwood.analysis.TwoWayTable;

/**
 * Each entry's cell means on the environment index I_j = environment mean − grand mean: the slopes
 * average 1; above 1 an entry makes more of a good place than the others do. The interaction splits
 * into what differing slopes explain and the deviations from the lines,
 *
 * <pre>SS(slopes) = Σ (b_i − 1)² ΣI², g − 1 df;  SS(deviations) = the rest, (g − 1)(q − 2) df</pre>
 *
 * for g entries in q environments.
 *
 * <p>Source: Yates, F. and Cochran, W. G. (1938) The analysis of groups of experiments. Journal of
 * Agricultural Science 28, 556–580; Finlay, K. W. and Wilkinson, G. N. (1963) The analysis of
 * adaptation in a plant-breeding programme. Australian Journal of Agricultural Research 14, 742–754
 *
 * @param lines one an entry, in the order of the table
 * @param slopeSquares SS(slopes)
 * @param slopeDf g − 1
 * @param deviationSquares SS(deviations)
 * @param deviationDf (g − 1)(q − 2)
 */
public record JointRegression(
    List<StabilityLine> lines,
    double slopeSquares,
    int slopeDf,
    double deviationSquares,
    int deviationDf) {

  private static final double ROUNDING = 1e-12;

  public JointRegression {
    lines = List.copyOf(lines);
  }

  /** Lacking with fewer than three environments, or where all of them have one mean. */
  public static Answer<JointRegression> of(TwoWayTable table) {
    int environments = table.columns().size();
    if (environments < 3) {
      return Answer.lacking("A slope on the environments needs at least three of them.");
    }
    double interaction = table.interactionSquares();
    double[] index = table.columnEffects();
    var lines = new ArrayList<StabilityLine>();
    double slopes = 0;
    for (int i = 0; i < table.rows().size(); i++) {
      if (table.columnSquares() == 0
          || !(StraightLine.through(index, table.row(i))
              instanceof Answer.Known<StraightLine> line)) {
        return Answer.lacking("All environments have the same mean: none is better or poorer.");
      }
      StabilityLine own = new StabilityLine(table.rows().get(i), line.answer());
      lines.add(own);
      slopes += (own.slope() - 1) * (own.slope() - 1) * line.answer().spread();
    }
    double deviations = interaction - slopes;
    return Answer.known(
        new JointRegression(
            lines,
            slopes,
            lines.size() - 1,
            deviations <= ROUNDING * interaction ? 0 : deviations,
            (lines.size() - 1) * (environments - 2)));
  }

  /** Mean square of the slopes over that of the deviations; lacking where nothing deviates. */
  public Answer<Double> f() {
    return deviationSquares > 0
        ? Answer.known((slopeSquares / slopeDf) / (deviationSquares / deviationDf))
        : Answer.lacking("No entry deviates from its line.");
  }

  /** Probability of so large an F if all slopes were 1. */
  public Answer<Double> pValue() {
    return f().map(f -> FDistribution.of(slopeDf, deviationDf).survivalProbability(f));
  }

  /**
   * @throws IllegalArgumentException if no entry has that name
   */
  public StabilityLine of(String entry) {
    return lines.stream()
        .filter(line -> line.entry().equals(entry))
        .findFirst()
        .orElseThrow(() -> Refuse.because("%s is not in the table.", entry));
  }
}
