package trialwood.analysis.means;

import java.util.List;

/**
 * How a term turns into columns of numbers. Each of its factors is written either with one column a
 * level less one, by sums to zero (the last level is −1 in all of them), or with one column a
 * level; the term's columns are all products. The short form holds wherever the term without the
 * factor is in the model, too, as in R.
 *
 * <p>Source: Chambers, J. M. and Hastie, T. J. (1992) Statistical Models in S, chapter 2
 *
 * @param term what is coded
 * @param factors of the term, in its order
 * @param sumToZero for each factor whether it has the short form
 * @param offset number of the first column
 * @param width number of columns
 */
record TermColumns(Term term, List<Factor> factors, boolean[] sumToZero, int offset, int width) {

  static TermColumns of(Term term, List<Factor> factors, boolean[] sumToZero, int offset) {
    int width = 1;
    for (int f = 0; f < factors.size(); f++) {
      width *= factors.get(f).count() - (sumToZero[f] ? 1 : 0);
    }
    return new TermColumns(term, factors, sumToZero, offset, width);
  }

  /**
   * Adds the columns at one combination of levels, times the weight, to a row of the whole model.
   *
   * @param levels place of the level of each factor, in the order of the factors
   */
  void add(double[] row, int[] levels, double weight) {
    add(row, levels, 0, 0, weight);
  }

  /** Number of the column after the last. */
  int end() {
    return offset + width;
  }

  boolean holds(int column) {
    return offset <= column && column < end();
  }

  /** The levels of the term's factors in one plot. */
  int[] levelsOf(int plot) {
    return factors.stream().mapToInt(factor -> factor.ofPlot()[plot]).toArray();
  }

  private void add(double[] row, int[] levels, int factor, int column, double product) {
    if (factor == levels.length) {
      row[offset + column] += product;
      return;
    }
    int columns = factors.get(factor).count() - (sumToZero[factor] ? 1 : 0);
    if (levels[factor] < columns) {
      add(row, levels, factor + 1, column * columns + levels[factor], product);
    } else {
      for (int i = 0; i < columns; i++) {
        add(row, levels, factor + 1, column * columns + i, -product);
      }
    }
  }
}
