package trialwood.analysis.means;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** p values of several tests, made to stand together. Each method keeps the order given. */
public final class AdjustedP {

  private AdjustedP() {}

  /**
   * Each times the number of tests: no false finding in the whole family, with the level's
   * confidence.
   *
   * <p>Source: Dunn, O. J. (1961) Multiple comparisons among means. Journal of the American
   * Statistical Association 56, 52–64
   */
  public static double[] bonferroni(double... p) {
    return Arrays.stream(p).map(each -> Math.min(1, each * p.length)).toArray();
  }

  /**
   * As Bonferroni, but stepwise: the smallest times n, the next times n − 1, none below the one
   * before.
   *
   * <p>Source: Holm, S. (1979) A simple sequentially rejective multiple test procedure.
   * Scandinavian Journal of Statistics 6, 65–70
   */
  public static double[] holm(double... p) {
    double[] adjusted = new double[p.length];
    double least = 0;
    int[] ascending = ascending(p);
    for (int rank = 0; rank < p.length; rank++) {
      least = Math.max(least, Math.min(1, p[ascending[rank]] * (p.length - rank)));
      adjusted[ascending[rank]] = least;
    }
    return adjusted;
  }

  /**
   * Of the findings below the level, that share at most is false in the long run.
   *
   * <p>Source: Benjamini, Y. and Hochberg, Y. (1995) Controlling the false discovery rate. Journal
   * of the Royal Statistical Society B 57, 289–300
   */
  public static double[] falseDiscoveryRate(double... p) {
    double[] adjusted = new double[p.length];
    double most = 1;
    int[] ascending = ascending(p);
    for (int rank = p.length - 1; rank >= 0; rank--) {
      most = Math.min(most, p[ascending[rank]] * p.length / (rank + 1));
      adjusted[ascending[rank]] = most;
    }
    return adjusted;
  }

  private static int[] ascending(double[] p) {
    return IntStream.range(0, p.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> p[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
