package trialwood.analysis.means;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.ranking.NaturalRanking;
import trialwood.analysis.Answer;

/**
 * Whether several groups take their values from one distribution, by ranks: for scores and for
 * values far from normal.
 *
 * <p>H = (12 / (N(N + 1)) Σ Rᵢ²/nᵢ − 3(N + 1)) / (1 − Σ(t³ − t)/(N³ − N)), Rᵢ the sum of the ranks
 * of a group, ties at their mean rank, t the number of values in each tie; nearly χ² with one
 * degree of freedom fewer than there are groups.
 *
 * <p>Source: Kruskal, W. H. and Wallis, W. A. (1952) Use of ranks in one-criterion variance
 * analysis. Journal of the American Statistical Association 47, 583–621
 *
 * @param h the statistic
 * @param df groups less one
 * @param p chance of such an H or a greater one if the groups are alike
 */
public record KruskalWallis(double h, int df, double p) {

  /** Lacking for fewer than two groups, and if all values are the same. */
  public static Answer<KruskalWallis> of(Groups groups) {
    List<double[]> values = groups.values();
    double[] all = values.stream().flatMapToDouble(DoubleStream::of).toArray();
    if (values.size() < 2) {
      return Answer.lacking("Ranks can be compared for two groups with values, or more.");
    }
    double[] ranks = new NaturalRanking().apply(all);
    Map<Double, Integer> ties = new HashMap<>();
    for (double rank : ranks) {
      ties.merge(rank, 1, Integer::sum);
    }
    double n = all.length;
    double tied = ties.values().stream().mapToDouble(t -> (double) t * t * t - t).sum();
    double untied = 1 - tied / (n * n * n - n);
    if (ties.size() < 2) {
      return Answer.lacking("All values are the same: there are no ranks.");
    }
    double middle = (n + 1) / 2;
    double between = 0;
    int from = 0;
    for (double[] group : values) {
      double sum = 0;
      for (int i = 0; i < group.length; i++) {
        sum += ranks[from + i] - middle;
      }
      from += group.length;
      between += sum * sum / group.length;
    }
    double h = 12 / (n * (n + 1)) * between / untied;
    int df = values.size() - 1;
    return Answer.known(
        new KruskalWallis(h, df, ChiSquaredDistribution.of(df).survivalProbability(h)));
  }
}
