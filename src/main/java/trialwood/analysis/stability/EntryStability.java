package trialwood.analysis.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.trial.Better;

/**
 * An entry's plain measures of steadiness, g entries in q environments, x_ij the cell mean:
 *
 * <ul>
 *   <li>environmental variance Σ_j (x_ij − x̄_i)²/(q − 1): small for one that is the same
 *       everywhere
 *   <li>ecovalence W_i = Σ_j (interaction_ij)²: its part of the interaction (Wricke 1962)
 *   <li>stability variance σ²_i = g W_i/((g − 2)(q − 1)) − ΣW/((g − 1)(g − 2)(q − 1)) (Shukla 1972)
 *   <li>superiority P_i = Σ_j (x_ij − best_j)²/2q: small for one that is near the best everywhere
 *       (Lin and Binns 1988)
 *   <li>rank sum: place by mean and place by stability variance added, ties sharing their average
 *       (Kang 1988)
 * </ul>
 *
 * <p>Sources: Wricke, G. (1962) Über eine Methode zur Erfassung der ökologischen Streubreite in
 * Feldversuchen. Zeitschrift für Pflanzenzüchtung 47, 92–96; Shukla, G. K. (1972) Heredity 29,
 * 237–245; Lin, C. S. and Binns, M. R. (1988) Canadian Journal of Plant Science 68, 193–198; Kang,
 * M. S. (1988) Cereal Research Communications 16, 113–115
 *
 * @param entry its name
 * @param mean over the environments
 * @param environmentalVariance in the unit of the trait, squared
 * @param ecovalence W, the same
 * @param stabilityVariance σ², the same; may be negative
 * @param superiority P, the same; 0 for one that is best everywhere
 * @param placeByMean 1 for the best mean
 * @param placeByVariance 1 for the least stability variance
 */
public record EntryStability(
    String entry,
    double mean,
    double environmentalVariance,
    double ecovalence,
    double stabilityVariance,
    double superiority,
    double placeByMean,
    double placeByVariance) {

  /** Both places together; small for one that is good and steady. */
  public double rankSum() {
    return placeByMean + placeByVariance;
  }

  /**
   * One line an entry, in the order of the table. Lacking with fewer than three entries: with two,
   * both have the same interaction.
   *
   * @param better which way of the trait is the better one
   */
  public static Answer<List<EntryStability>> of(TwoWayTable table, Better better) {
    int entries = table.rows().size();
    int environments = table.columns().size();
    if (entries < 3) {
      return Answer.lacking("Which of two entries is the steadier needs a third to compare with.");
    }
    double[] means = new double[entries];
    double[] variances = new double[entries];
    double freedom = (entries - 2.0) * (environments - 1);
    for (int i = 0; i < entries; i++) {
      means[i] = better == Better.HIGHER ? -table.rowMean(i) : table.rowMean(i);
      variances[i] =
          entries * table.interactionSquares(i) / freedom
              - table.interactionSquares() / ((entries - 1) * freedom);
    }
    double[] byMean = places(means);
    double[] byVariance = places(variances);
    var measures = new ArrayList<EntryStability>();
    for (int i = 0; i < entries; i++) {
      double mean = table.rowMean(i);
      double spread = Arrays.stream(table.row(i)).map(x -> (x - mean) * (x - mean)).sum();
      measures.add(
          new EntryStability(
              table.rows().get(i),
              mean,
              spread / (environments - 1),
              table.interactionSquares(i),
              variances[i],
              superiority(table, i, better),
              byMean[i],
              byVariance[i]));
    }
    return Answer.known(List.copyOf(measures));
  }

  private static double superiority(TwoWayTable table, int entry, Better better) {
    double squares = 0;
    for (int j = 0; j < table.columns().size(); j++) {
      double best = table.at(0, j);
      for (int i = 1; i < table.rows().size(); i++) {
        best =
            better == Better.HIGHER
                ? Math.max(best, table.at(i, j))
                : Math.min(best, table.at(i, j));
      }
      squares += (table.at(entry, j) - best) * (table.at(entry, j) - best);
    }
    return squares / (2 * table.columns().size());
  }

  /** Places from the smallest value up, ties sharing the average of theirs. */
  private static double[] places(double[] values) {
    double[] places = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      int smaller = 0;
      int same = 0;
      for (double value : values) {
        smaller += value < values[i] ? 1 : 0;
        same += value == values[i] ? 1 : 0;
      }
      places[i] = smaller + (same + 1) / 2.0;
    }
    return places;
  }
}
