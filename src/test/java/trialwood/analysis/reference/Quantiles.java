package trialwood.analysis.reference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Quantile;
import trialwood.analysis.means.DunnettDistribution;
import trialwood.analysis.means.StudentisedRange;

/** Quantiles of distributions: 12. */
final class Quantiles implements Family {

  private final Map<String, StudentisedRange> ranges = new HashMap<>();
  private final Map<String, DunnettDistribution> dunnetts = new HashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "qt",
        row -> Quantile.of(TDistribution.of(row.number("df")), row.number("p")),
        "qchisq",
        row -> Quantile.of(ChiSquaredDistribution.of(row.number("df")), row.number("p")),
        "qnorm",
        row -> Quantile.of(NormalDistribution.of(0, 1), row.number("p")),
        "qf",
        Quantiles::ofF,
        "pf_upper",
        Quantiles::aboveF,
        "qtukey",
        row -> range(row).quantile(row.number("p")),
        "ptukey",
        row -> range(row).cumulativeProbability(row.number("q")),
        "qdunnett.two_sided",
        row -> dunnett(row).twoSidedQuantile(row.number("p")),
        "qdunnett.one_sided",
        row -> dunnett(row).oneSidedQuantile(row.number("p")));
  }

  /** With infinitely many degrees of freedom below, F is χ² over its own. */
  private static Object ofF(Row row) {
    double df1 = row.number("df1");
    double df2 = row.number("df2");
    return Double.isInfinite(df2)
        ? Quantile.of(ChiSquaredDistribution.of(df1), row.number("p")) / df1
        : Quantile.of(FDistribution.of(df1, df2), row.number("p"));
  }

  private static Object aboveF(Row row) {
    double df1 = row.number("df1");
    double df2 = row.number("df2");
    return Double.isInfinite(df2)
        ? ChiSquaredDistribution.of(df1).survivalProbability(df1 * row.number("f"))
        : FDistribution.of(df1, df2).survivalProbability(row.number("f"));
  }

  private StudentisedRange range(Row row) {
    return ranges.computeIfAbsent(
        row.input("k") + " " + row.input("df"),
        key -> StudentisedRange.of(row.whole("k"), row.number("df")));
  }

  private DunnettDistribution dunnett(Row row) {
    return dunnetts.computeIfAbsent(
        row.given(),
        given ->
            row.has("n_control")
                ? DunnettDistribution.ofReplicates(
                    row.whole("n_control"),
                    Arrays.stream(row.numbers("n_treatments")).mapToInt(n -> (int) n).toArray(),
                    row.number("df"))
                : DunnettDistribution.ofEqual(row.whole("k"), row.number("rho"), row.number("df")));
  }
}
