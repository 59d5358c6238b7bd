package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
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
   * @param shared for each pair of cells a bit for every owned term whose level they share
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
      int[] shared,
      int[][] levels,
      int[] fine,
      int[] coarse,
      int[][] column,
      int columns) {

    static Block of(double[] counts, SparseRows means, int[] shared, int[][] levels) {
      int cells = counts.length;
      int[][] column = new int[levels.length][];
      int columns = 0;
      for (int t = 0; t < levels.length; t++) {
        int[] distinct = Arrays.stream(levels[t]).sorted().distinct().toArray();
        if (distinct.length < cells) {
          column[t] = new int[cells];
          for (int c = 0; c < cells; c++) {
            column[t][c] = columns + Arrays.binarySearch(distinct, levels[t][c]);
          }
          columns += distinct.length;
        }
      }
      int[] fine = IntStream.range(0, levels.length).filter(t -> column[t] == null).toArray();
      int[] coarse = IntStream.range(0, levels.length).filter(t -> column[t] != null).toArray();
      int[][] kept = Arrays.stream(coarse).mapToObj(t -> column[t]).toArray(int[][]::new);
      return new Block(counts, means, shared, levels, fine, coarse, kept, columns);
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
