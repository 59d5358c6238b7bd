package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;

/**
 * Every entry less one named check, judged together after Dunnett.
 *
 * @param check whose mean is taken off
 * @param entries those that can be compared with it, in alphabetical order
 * @param lacking a sentence for each that cannot
 * @param distribution of the greatest t among them
 */
public record CheckDifferences(
    String check, List<Entry> entries, List<String> lacking, DunnettDistribution distribution) {

  /**
   * One entry less the check.
   *
   * @param name of the entry
   * @param difference in the unit of the trait
   * @param t difference over its standard error
   */
  public record Entry(String name, StudentBelief difference, double t) {}

  public CheckDifferences {
    entries = List.copyOf(entries);
    lacking = List.copyOf(lacking);
  }

  static Answer<CheckDifferences> of(AdjustedMeans means, String check) {
    LinearFunction ofCheck = means.function(check);
    var entries = new ArrayList<Entry>();
    var lacking = new ArrayList<String>();
    var functions = new ArrayList<LinearFunction>();
    for (String name : means.names()) {
      if (name.equals(check)) {
        continue;
      }
      Answer<StudentBelief> difference = means.difference(name, check);
      if (difference instanceof Answer.Known<StudentBelief> known) {
        StudentBelief d = known.answer();
        entries.add(new Entry(name, d, StudentTest.t(d)));
        functions.add(means.function(name).minus(ofCheck));
      } else {
        lacking.add(difference.lack().orElseThrow());
      }
    }
    if (entries.isEmpty()) {
      return Answer.lacking("No entry can be compared with %s.".formatted(check));
    }
    return Answer.known(
        new CheckDifferences(
            check,
            entries,
            lacking,
            DunnettDistribution.of(correlation(functions), means.residualDf())));
  }

  private static double[][] correlation(List<LinearFunction> functions) {
    int k = functions.size();
    double[][] correlation = new double[k][k];
    for (int i = 0; i < k; i++) {
      correlation[i][i] = 1;
      for (int j = 0; j < i; j++) {
        LinearFunction a = functions.get(i);
        LinearFunction b = functions.get(j);
        double product = OrthogonalColumns.dot(a.spread(), b.spread());
        correlation[i][j] = product / Math.sqrt(a.squaredLength() * b.squaredLength());
        correlation[j][i] = correlation[i][j];
      }
    }
    return correlation;
  }

  /**
   * @throws IllegalArgumentException if the entry is not compared here
   */
  public Entry entry(String name) {
    return entries.stream()
        .filter(entry -> entry.name().equals(name))
        .findAny()
        .orElseThrow(
            () -> new IllegalArgumentException(name + " is not compared with " + check + "."));
  }

  /** Chance that some entry would lie as far from the check on either side if all were equal. */
  public double twoSidedP(Entry entry) {
    return distribution.beyondOnEitherSide(Math.abs(entry.t()));
  }

  /** Chance that some entry would lie as far above the check if all were equal. */
  public double aboveP(Entry entry) {
    return distribution.beyond(entry.t());
  }

  /** Chance that some entry would lie as far below the check if all were equal. */
  public double belowP(Entry entry) {
    return distribution.beyond(-entry.t());
  }

  /** Interval of an entry that holds together with those of all others. */
  public Interval interval(Entry entry, double level) {
    return StudentTest.around(entry.difference(), distribution.twoSidedQuantile(level), level);
  }

  /** That interval for every entry, in their order; the quantile is looked for once. */
  public Map<Entry, Interval> intervals(double level) {
    double times = distribution.twoSidedQuantile(level);
    var intervals = new LinkedHashMap<Entry, Interval>();
    for (Entry entry : entries) {
      intervals.put(entry, StudentTest.around(entry.difference(), times, level));
    }
    return Collections.unmodifiableMap(intervals);
  }
}
