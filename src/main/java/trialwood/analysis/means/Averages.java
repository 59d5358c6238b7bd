package trialwood.analysis.means;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import trialwood.analysis.Refuse;

/**
 * The average row of a model at fixed levels of some factors, over all levels of the others: each
 * level weighs the same; a factor that has no term of its own and lies inside others, as blocks lie
 * inside sites, weighs the same within each of their combinations.
 *
 * @param design the model
 * @param fixed factors whose levels are fixed
 */
record Averages(Design design, List<String> fixed) {

  Averages {
    fixed = List.copyOf(fixed);
    Refuse.unless(Set.copyOf(fixed).size() == fixed.size(), "A factor is named twice.");
    for (String factor : fixed) {
      design.factor(factor);
      Set<String> outer = outer(design, factor);
      Refuse.unless(
          outer.isEmpty(), "%s lies inside %s and has no means of its own.", factor, outer);
    }
  }

  /** One row of the model for each combination of the fixed factors' levels, by its name. */
  Map<String, double[]> rows() {
    var rows = new LinkedHashMap<String, double[]>();
    addRows(rows, same(), new int[fixed.size()], 0);
    return rows;
  }

  /** What all rows have in common: the mean and the terms without a fixed factor. */
  private double[] same() {
    double[] row = new double[design.width()];
    row[0] = 1;
    for (TermColumns term : design.terms()) {
      if (Collections.disjoint(fixed, term.term().factors())) {
        addTerm(row, term, new int[0], new int[term.factors().size()], 0);
      }
    }
    return row;
  }

  private void addRows(Map<String, double[]> rows, double[] same, int[] levels, int next) {
    if (next < fixed.size()) {
      for (int level = 0; level < design.factor(fixed.get(next)).count(); level++) {
        levels[next] = level;
        addRows(rows, same, levels, next + 1);
      }
      return;
    }
    String[] names = new String[levels.length];
    for (int i = 0; i < names.length; i++) {
      names[i] = design.factor(fixed.get(i)).levels().get(levels[i]);
    }
    rows.put(String.join(":", names), row(same, levels));
  }

  private double[] row(double[] same, int[] at) {
    double[] row = same.clone();
    for (TermColumns term : design.terms()) {
      if (!Collections.disjoint(fixed, term.term().factors())) {
        addTerm(row, term, at, new int[term.factors().size()], 0);
      }
    }
    return row;
  }

  private void addTerm(double[] row, TermColumns term, int[] at, int[] levels, int next) {
    if (next == levels.length) {
      double weight = weight(term, levels);
      if (weight > 0) {
        term.add(row, levels, weight);
      }
      return;
    }
    int place = fixed.indexOf(term.factors().get(next).name());
    int first = place < 0 ? 0 : at[place];
    int last = place < 0 ? term.factors().get(next).count() - 1 : at[place];
    for (int level = first; level <= last; level++) {
      levels[next] = level;
      addTerm(row, term, at, levels, next + 1);
    }
  }

  /** Product of the weights of the levels of the factors that are averaged. */
  private double weight(TermColumns term, int[] levels) {
    double weight = 1;
    for (int f = 0; f < levels.length; f++) {
      Factor factor = term.factors().get(f);
      Set<String> outer = outer(design, factor.name());
      if (!outer.isEmpty()) {
        weight *= weightInside(term, levels, f, outer);
      } else if (!fixed.contains(factor.name())) {
        weight /= factor.count();
      }
    }
    return weight;
  }

  /** One over the number of levels seen at the same levels of the outer factors; 0 if not seen. */
  private double weightInside(TermColumns term, int[] levels, int inner, Set<String> outer) {
    var seen = new TreeSet<Integer>();
    int[] first = term.factors().get(inner).ofPlot();
    for (int plot = 0; plot < design.plots(); plot++) {
      boolean same = true;
      for (int f = 0; f < levels.length; f++) {
        Factor factor = term.factors().get(f);
        same &= !outer.contains(factor.name()) || factor.ofPlot()[plot] == levels[f];
      }
      if (same) {
        seen.add(first[plot]);
      }
    }
    return seen.contains(levels[inner]) ? 1.0 / seen.size() : 0;
  }

  /** The factors that a factor lies inside of; none if it has a term of its own. */
  private static Set<String> outer(Design design, String factor) {
    Set<String> common = new HashSet<>(design.factors().keySet());
    for (TermColumns term : design.terms()) {
      if (term.term().factors().contains(factor)) {
        common.retainAll(term.term().factors());
      }
    }
    common.remove(factor);
    boolean hasTerm = design.terms().stream().anyMatch(term -> term.term().sameAs(common));
    return hasTerm ? common : Set.of();
  }
}
