package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * The values of a model, reduced to what its likelihood needs.
 *
 * <p>One random factor is chosen as the <em>owner</em>: the random terms nested in it (entry ×
 * site, entry × season …) fall into one block a level of it, and a block holds only the
 * <em>cells</em>, the combinations of these terms that occur. Fixed effects and the random terms
 * that cross the owner form the <em>border</em>. Inside a cell values differ by border and residual
 * alone, so their cross-products are summed once, whatever the variances.
 *
 * @param values how many values
 * @param fixed the fixed columns, the first of the border
 * @param owned terms nested in the owner
 * @param crossing random terms of the border, their levels being its further columns
 * @param start first border column of each crossing term, and one past the last
 * @param within cross-products of border columns and, last, the values, about the means of their
 *     cells
 * @param blocks one a level of the owner
 * @param sumLogCells Σ log nᵢ over the cells
 * @param cells how many cells
 */
record Layout(
    int values,
    FixedPart fixed,
    List<Factor> owned,
    List<Factor> crossing,
    int[] start,
    DMatrixRMaj within,
    List<Block> blocks,
    double sumLogCells,
    int cells) {

  static Layout of(double[] values, FixedPart fixed, List<Factor> random) {
    List<Factor> owned = owned(random, values.length);
    List<Factor> crossing = random.stream().filter(term -> !owned.contains(term)).toList();
    int[] start = new int[crossing.size() + 1];
    start[0] = fixed.count();
    for (int t = 0; t < crossing.size(); t++) {
      start[t + 1] = start[t] + crossing.get(t).levels().size();
    }
    int border = start[crossing.size()];
    Combination cells = cells(owned, values.length);
    int[] blockOf = owned.isEmpty() ? new int[values.length] : owned.get(0).codes();
    return new CellSums(values, fixed, crossing, start, border, cells).layout(owned, blockOf);
  }

  /** The combinations of the owned terms, those of one level of the owner side by side. */
  private static Combination cells(List<Factor> owned, int values) {
    if (owned.isEmpty()) {
      return new Combination(new int[values], 1);
    }
    Factor finest =
        owned.stream().max(Comparator.comparingInt(term -> term.levels().size())).orElseThrow();
    var cells = new Combination(finest.codes(), finest.levels().size());
    for (Factor term : owned) {
      if (!finest.isNestedIn(term)) {
        cells = Combination.of(cells.codes(), term.codes());
      }
    }
    return Combination.of(owned.get(0).codes(), cells.codes());
  }

  /** Columns of the border: fixed effects and levels of the crossing terms. */
  int border() {
    return start[crossing.size()];
  }

  /** The terms nested in the owner that makes the least work, the owner first. */
  private static List<Factor> owned(List<Factor> random, int values) {
    return random.stream()
        .map(owner -> nestedIn(owner, random))
        .min(Comparator.comparingDouble(owned -> work(owned, random, values)))
        .orElse(List.of());
  }

  private static List<Factor> nestedIn(Factor owner, List<Factor> random) {
    var nested = new ArrayList<Factor>(List.of(owner));
    random.stream().filter(term -> term != owner && term.isNestedIn(owner)).forEach(nested::add);
    return nested;
  }

  /** About how many multiplications one evaluation takes: blocks and border, each cubed. */
  private static double work(List<Factor> owned, List<Factor> random, int values) {
    double blocks = owned.get(0).levels().size();
    double finest = owned.stream().mapToInt(term -> term.levels().size()).max().orElse(1);
    double cells = Math.min(values, finest) / blocks;
    double border =
        random.stream()
            .filter(term -> !owned.contains(term))
            .mapToInt(t -> t.levels().size())
            .sum();
    return blocks * Math.pow(cells, 3) + Math.pow(border, 3) + blocks * cells * border * 8;
  }

  /**
   * The cells of one level of the owner.
   *
   * @param counts values in each cell
   * @param means row by row, sparse: border columns, then the value itself in the last column
   * @param levels for each owned term the level of each cell
   * @param fine terms that give every cell of the block a level of its own
   * @param coarse the other terms
   * @param column for each coarse term and cell a number of its level among all levels of coarse
   *     terms in the block
   * @param columns how many such numbers
   */
  record Block(
      double[] counts,
      SparseRows means,
      int[][] levels,
      int[] fine,
      int[] coarse,
      int[][] column,
      int columns) {

    static Block of(double[] counts, SparseRows means, int[][] levels) {
      int[][] column = new int[levels.length][];
      int[] fine = new int[levels.length];
      int[] coarse = new int[levels.length];
      int fines = 0;
      int coarses = 0;
      int columns = 0;
      for (int t = 0; t < levels.length; t++) {
        int[] numbered = new int[counts.length];
        int distinct = number(levels[t], columns, numbered);
        if (distinct == counts.length) {
          fine[fines++] = t;
        } else {
          column[coarses] = numbered;
          coarse[coarses++] = t;
          columns += distinct;
        }
      }
      return new Block(
          counts,
          means,
          levels,
          Arrays.copyOf(fine, fines),
          Arrays.copyOf(coarse, coarses),
          Arrays.copyOf(column, coarses),
          columns);
    }

    /** Numbers levels in the order in which they appear, and says how many there are. */
    private static int number(int[] levels, int first, int[] numbered) {
      int distinct = 0;
      int[] seen = new int[levels.length];
      for (int c = 0; c < levels.length; c++) {
        int at = 0;
        while (at < distinct && seen[at] != levels[c]) {
          at++;
        }
        if (at == distinct) {
          seen[distinct++] = levels[c];
        }
        numbered[c] = first + at;
      }
      return distinct;
    }

    int cells() {
      return counts.length;
    }
  }

  /** Rows with few entries: row r has entries {@code from[r]} to {@code from[r + 1]}. */
  record SparseRows(int[] from, int[] columns, double[] entries) {}

  @Override
  public String toString() {
    return "%d values in %d cells of %d blocks, border %d %s"
        .formatted(values, cells, blocks.size(), border(), Arrays.toString(start));
  }
}
