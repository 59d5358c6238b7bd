package trialwood.analysis.distinct;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.TDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * Combined over-years uniformity (COYU) of a measured characteristic, moving-average form: a
 * candidate is uniform where its spread between plants, ln(sd + 1), is not beyond that of the
 * reference varieties. Spread goes with size, so in each year the trend of the spread along the
 * means, a centred moving average of nine reference varieties narrowing at the ends, is taken off
 * first and the year's reference mean put in its place; a candidate's trend is read between its
 * neighbours. The candidate's mean over k years may reach
 *
 * <pre>UC = reference mean + t √(V(1/k + 1/(R k)))</pre>
 *
 * with V the variance of the adjusted values of the R reference varieties within years, k(R − 1)
 * df, and t one-tailed.
 *
 * <p>Source: UPOV TGP/8 Part II, The combined over-years uniformity criterion (COYU),
 * moving-average form
 *
 * @param candidate its adjusted ln(sd + 1), one a year
 * @param references those of the reference varieties, one each a year
 * @param variance V
 * @param years k
 * @param varieties R
 */
public record Uniformity(
    List<AdjustedSpread> candidate,
    List<AdjustedSpread> references,
    double variance,
    int years,
    int varieties) {

  private static final int WINDOW = 9;
  private static final double ROUNDING = 1e-20;

  public Uniformity {
    candidate = List.copyOf(candidate);
    references = List.copyOf(references);
  }

  /**
   * Lacking unless the candidate and at least two reference varieties were measured in every year,
   * or where the reference varieties do not vary.
   *
   * @param candidate one line a year
   * @param references all reference varieties, one line each a year
   */
  public static Answer<Uniformity> of(
      Collection<VarietyYear> candidate, Collection<VarietyYear> references) {
    var years = new TreeMap<Integer, List<VarietyYear>>();
    references.forEach(
        line -> years.computeIfAbsent(line.year(), year -> new ArrayList<>()).add(line));
    Set<String> names = new HashSet<>();
    references.forEach(line -> names.add(line.variety()));
    if (names.size() < 2
        || references.size() != names.size() * years.size()
        || years.values().stream().anyMatch(lines -> distinctNames(lines) != names.size())) {
      return Answer.lacking("Two or more reference varieties must be measured in every year.");
    }
    if (candidate.size() != years.size()
        || !candidate.stream().allMatch(line -> years.containsKey(line.year()))
        || candidate.stream().map(VarietyYear::year).distinct().count() != years.size()) {
      return Answer.lacking("The candidate must be measured once in every year of its references.");
    }
    var own = new ArrayList<AdjustedSpread>();
    var others = new ArrayList<AdjustedSpread>();
    double squares = 0;
    for (VarietyYear line : candidate) {
      SpreadTrend trend = SpreadTrend.of(years.get(line.year()), WINDOW);
      own.add(trend.adjusted(line));
      others.addAll(trend.adjusted());
      squares += trend.squares();
    }
    int df = years.size() * (names.size() - 1);
    return squares > ROUNDING
        ? Answer.known(new Uniformity(own, others, squares / df, years.size(), names.size()))
        : Answer.lacking("The reference varieties do not vary about their trend.");
  }

  /** The candidate's adjusted ln(sd + 1) over the years. */
  public double candidateMean() {
    return candidate.stream().mapToDouble(AdjustedSpread::value).average().orElseThrow();
  }

  /** That of all reference varieties. */
  public double referenceMean() {
    return references.stream().mapToDouble(AdjustedSpread::value).average().orElseThrow();
  }

  /** k(R − 1). */
  public int df() {
    return years * (varieties - 1);
  }

  /**
   * UC, the most that a uniform candidate reaches.
   *
   * @param level one-tailed probability, inside (0, 1)
   */
  public double limit(double level) {
    Refuse.unlessInside(level, "level of a test");
    double t = Quantile.of(TDistribution.of(df()), 1 - level);
    return referenceMean()
        + t * Math.sqrt(variance * (1.0 / years + 1.0 / (varieties * (double) years)));
  }

  public boolean uniform(double level) {
    return candidateMean() <= limit(level);
  }

  private static long distinctNames(List<VarietyYear> lines) {
    return lines.stream().map(VarietyYear::variety).distinct().count();
  }
}
