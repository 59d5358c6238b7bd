package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;

/**
 * Every pair of adjusted means, the later level less the earlier.
 *
 * @param pairs those that can be compared
 * @param lacking a sentence for each pair that cannot
 * @param levels number of means in the table
 * @param residualDf degrees of freedom of the standard errors
 */
public record PairwiseDifferences(
    List<Pair> pairs, List<String> lacking, int levels, int residualDf) {

  /**
   * Two means.
   *
   * @param first its mean comes first
   * @param second its mean is taken off
   * @param difference with the standard error of a difference, in the unit of the trait
   * @param t difference over its standard error
   * @param p of this pair alone, two-sided
   * @param bonferroni p for all pairs together
   * @param holm p for all pairs together, stepwise
   * @param falseDiscoveryRate p by the share of false findings
   */
  public record Pair(
      String first,
      String second,
      StudentBelief difference,
      double t,
      double p,
      double bonferroni,
      double holm,
      double falseDiscoveryRate) {

    /** The same pair the other way round. */
    public Pair turned() {
      return new Pair(
          second, first, difference.negated(), -t, p, bonferroni, holm, falseDiscoveryRate);
    }

    /**
     * Least significant difference: t times the standard error. It speaks for a pair chosen
     * beforehand, not for the largest of many.
     *
     * @param alpha chance of exceeding it on either side if the true means are equal, inside (0, 1)
     */
    public double leastSignificantDifference(double alpha) {
      Refuse.unlessInside(alpha, "significance level");
      return new StudentBelief(0, difference.standardError(), difference.degreesOfFreedom())
          .quantile(1 - alpha / 2);
    }
  }

  public PairwiseDifferences {
    pairs = List.copyOf(pairs);
    lacking = List.copyOf(lacking);
  }

  static PairwiseDifferences of(AdjustedMeans means) {
    List<String> names = means.names();
    var found = new ArrayList<Pair>();
    var lacking = new ArrayList<String>();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        Answer<StudentBelief> difference = means.difference(names.get(j), names.get(i));
        if (difference instanceof Answer.Known<StudentBelief> known) {
          StudentBelief d = known.answer();
          double p = StudentTest.p(d);
          found.add(new Pair(names.get(j), names.get(i), d, StudentTest.t(d), p, p, p, p));
        } else {
          lacking.add(difference.lack().orElseThrow());
        }
      }
    }
    return new PairwiseDifferences(adjusted(found), lacking, names.size(), means.residualDf());
  }

  private static List<Pair> adjusted(List<Pair> found) {
    double[] p = found.stream().mapToDouble(Pair::p).toArray();
    double[] bonferroni = AdjustedP.bonferroni(p);
    double[] holm = AdjustedP.holm(p);
    double[] rate = AdjustedP.falseDiscoveryRate(p);
    var pairs = new ArrayList<Pair>();
    for (int i = 0; i < p.length; i++) {
      Pair pair = found.get(i);
      pairs.add(
          new Pair(
              pair.first(),
              pair.second(),
              pair.difference(),
              pair.t(),
              p[i],
              bonferroni[i],
              holm[i],
              rate[i]));
    }
    return pairs;
  }

  /**
   * The pair of two levels, {@code first} less {@code second}.
   *
   * @throws IllegalArgumentException if the two are not among the pairs
   */
  public Pair pair(String first, String second) {
    for (Pair pair : pairs) {
      if (pair.first().equals(first) && pair.second().equals(second)) {
        return pair;
      }
      if (pair.first().equals(second) && pair.second().equals(first)) {
        return pair.turned();
      }
    }
    throw new IllegalArgumentException(first + " and " + second + " are not compared here.");
  }

  /**
   * Tukey–Kramer: the chance that among so many equal means some pair differs by as many of its
   * standard errors as this one does.
   *
   * <p>Source: Kramer, C. Y. (1956) Extension of multiple range tests to group means with unequal
   * numbers of replications. Biometrics 12, 307–310
   */
  public double tukeyP(Pair pair) {
    return range().survivalProbability(Math.sqrt(2) * Math.abs(pair.t()));
  }

  /** Interval of a pair that holds together with those of all other pairs (Tukey–Kramer). */
  public Interval tukeyInterval(Pair pair, double level) {
    return StudentTest.around(pair.difference(), tukeyQuantile(level) / Math.sqrt(2), level);
  }

  /** That interval for every pair, in their order; the quantile is looked for once. */
  public Map<Pair, Interval> tukeyIntervals(double level) {
    double times = tukeyQuantile(level) / Math.sqrt(2);
    var intervals = new LinkedHashMap<Pair, Interval>();
    for (Pair pair : pairs) {
      intervals.put(pair, StudentTest.around(pair.difference(), times, level));
    }
    return Collections.unmodifiableMap(intervals);
  }

  /** Quantile of the studentised range for this table; over √2 it is one of t. */
  public double tukeyQuantile(double level) {
    return range().quantile(level);
  }

  /** Standard error of a difference where it is one for all pairs; lacking where it is not. */
  public Answer<Double> commonStandardError() {
    double low = pairs.stream().mapToDouble(this::se).min().orElse(Double.NaN);
    double high = pairs.stream().mapToDouble(this::se).max().orElse(Double.NaN);
    return high - low <= 1e-9 * high && lacking.isEmpty()
        ? Answer.known(low)
        : Answer.lacking("Pairs differ in their standard error: take that of the pair.");
  }

  private double se(Pair pair) {
    return pair.difference().standardError();
  }

  private StudentisedRange range() {
    return StudentisedRange.of(levels, residualDf);
  }
}
