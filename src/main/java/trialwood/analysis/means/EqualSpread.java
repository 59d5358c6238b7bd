package trialwood.analysis.means;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.Variance;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import trialwood.analysis.Answer;

/** Whether the values of several groups spread alike about their own centres. */
public final class EqualSpread {

  private EqualSpread() {}

  /**
   * A test by F.
   *
   * @param f the statistic
   * @param df1 groups less one
   * @param df2 values less groups
   * @param p chance of such an F or a greater one if the spreads are equal
   */
  public record ByF(double f, int df1, int df2, double p) {}

  /**
   * A test by χ².
   *
   * @param statistic nearly χ² distributed if the spreads are equal
   * @param df groups less one
   * @param p chance of such a statistic or a greater one
   */
  public record ByChiSquare(double statistic, int df, double p) {}

  /**
   * One-way analysis of variance of the distances |y − mean of its group|. Lacking for fewer than
   * two groups, without residual degrees of freedom, or if the distances do not vary.
   *
   * <p>Source: Levene, H. (1960) Robust tests for equality of variances. In: Contributions to
   * Probability and Statistics (ed. Olkin), 278–292
   */
  public static Answer<ByF> levene(Groups groups) {
    return ofDistances(groups, Groups::mean);
  }

  /**
   * As Levene, but with distances from the median: steadier where values are skew.
   *
   * <p>Source: Brown, M. B. and Forsythe, A. B. (1974) Robust tests for the equality of variances.
   * Journal of the American Statistical Association 69, 364–367
   */
  public static Answer<ByF> brownForsythe(Groups groups) {
    return ofDistances(groups, Groups::median);
  }

  private static Answer<ByF> ofDistances(Groups groups, ToDoubleFunction<double[]> centre) {
    List<double[]> values = groups.values();
    double[] distances =
        values.stream()
            .flatMapToDouble(
                group -> {
                  double middle = centre.applyAsDouble(group);
                  return DoubleStream.of(group).map(value -> Math.abs(value - middle));
                })
            .toArray();
    List<String> names =
        IntStream.range(0, values.size())
            .boxed()
            .flatMap(i -> DoubleStream.of(values.get(i)).mapToObj(value -> "group " + i))
            .toList();
    Answer<LinearModel> model =
        LinearModel.oneWay(PlotValues.of(distances).by("group", names), "group");
    if (!(model instanceof Answer.Known<LinearModel> known)) {
      return Answer.lacking(
          "Spreads can be compared for two groups or more, with values that vary in them.");
    }
    AnovaTable table = known.answer().sequential();
    AnovaTable.Line line = table.line("group");
    return Answer.known(new ByF(line.f(), line.df(), table.residualDf(), line.p()));
  }

  /**
   * Bartlett's K² = ((N − k) ln s² − Σ(nᵢ − 1) ln sᵢ²) / C with s² the pooled variance and C = 1 +
   * (Σ 1/(nᵢ − 1) − 1/(N − k)) / (3(k − 1)). Sensitive to values that are not normal. Lacking for
   * fewer than two groups, for a group of one value and for a group that does not vary.
   *
   * <p>Source: Bartlett, M. S. (1937) Properties of sufficiency and statistical tests. Proceedings
   * of the Royal Society A 160, 268–282
   */
  public static Answer<ByChiSquare> bartlett(Groups groups) {
    List<double[]> values = groups.values();
    if (values.size() < 2 || values.stream().anyMatch(group -> group.length < 2)) {
      return Answer.lacking("Bartlett's test needs two groups with two values each, or more.");
    }
    double[] variances =
        values.stream().mapToDouble(group -> Variance.of(group).getAsDouble()).toArray();
    if (DoubleStream.of(variances).anyMatch(variance -> variance <= 0)) {
      return Answer.lacking("One group does not vary at all: its logarithm does not exist.");
    }
    double df = 0;
    double pooled = 0;
    double logs = 0;
    double inverse = 0;
    for (int i = 0; i < variances.length; i++) {
      int own = values.get(i).length - 1;
      df += own;
      pooled += own * variances[i];
      logs += own * Math.log(variances[i]);
      inverse += 1.0 / own;
    }
    int groupsLessOne = variances.length - 1;
    double correction = 1 + (inverse - 1 / df) / (3 * groupsLessOne);
    double statistic = Math.max(0, (df * Math.log(pooled / df) - logs) / correction);
    return Answer.known(
        new ByChiSquare(
            statistic,
            groupsLessOne,
            ChiSquaredDistribution.of(groupsLessOne).survivalProbability(statistic)));
  }
}
