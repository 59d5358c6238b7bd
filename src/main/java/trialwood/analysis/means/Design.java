package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A model's terms as columns, the mean first.
 *
 * @param factors by name
 * @param terms in the order of the model
 * @param plots number of plots
 * @param width number of columns, that of the mean included
 */
record Design(Map<String, Factor> factors, List<TermColumns> terms, int plots, int width) {

  static Design of(PlotValues plots, List<Term> terms) {
    var factors = new HashMap<String, Factor>();
    var columns = new ArrayList<TermColumns>();
    int width = 1;
    for (Term term : terms) {
      List<Factor> own = new ArrayList<>();
      boolean[] sumToZero = new boolean[term.factors().size()];
      for (int f = 0; f < sumToZero.length; f++) {
        String name = term.factors().get(f);
        own.add(factors.computeIfAbsent(name, n -> Factor.of(plots, n)));
        sumToZero[f] = hasMargin(terms, term, name);
      }
      TermColumns coded = TermColumns.of(term, List.copyOf(own), sumToZero, width);
      columns.add(coded);
      width += coded.width();
    }
    return new Design(Map.copyOf(factors), List.copyOf(columns), plots.size(), width);
  }

  /** Whether the term without the factor is in the model; without any factor it is the mean. */
  private static boolean hasMargin(List<Term> terms, Term term, String factor) {
    Set<String> margin = new HashSet<>(term.factors());
    margin.remove(factor);
    return margin.isEmpty() || terms.stream().anyMatch(other -> other.sameAs(margin));
  }

  /** One array a column, one number a plot. */
  double[][] columns() {
    double[][] columns = new double[width][plots];
    double[] row = new double[width];
    for (int plot = 0; plot < plots; plot++) {
      Arrays.fill(row, 0);
      row[0] = 1;
      for (TermColumns term : terms) {
        term.add(row, term.levelsOf(plot), 1);
      }
      for (int column = 0; column < width; column++) {
        columns[column][plot] = row[column];
      }
    }
    return columns;
  }

  Factor factor(String name) {
    Factor factor = factors.get(name);
    if (factor == null) {
      throw new IllegalArgumentException(name + " is not in the model.");
    }
    return factor;
  }
}
