package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/** Adds values and border columns up by cell, in one pass over the values. */
final class CellSums {

  private final double[] values;
  private final FixedPart fixed;
  private final List<Factor> crossing;
  private final int[] start;
  private final int border;
  private final int[] cellOf;
  private final int[] order;
  private final int[] from;
  private final DMatrixRMaj within;

  CellSums(
      double[] values,
      FixedPart fixed,
      List<Factor> crossing,
      int[] start,
      int border,
      Combination cells) {
    this.values = values;
    this.fixed = fixed;
    this.crossing = crossing;
    this.start = start;
    this.border = border;
    this.cellOf = cells.codes();
    this.within = new DMatrixRMaj(border + 1, border + 1);
    this.from = new int[cells.count() + 1];
    this.order = byCell();
  }

  /** Values in the order of their cells; {@code from} says where each cell begins. */
  private int[] byCell() {
    for (int cell : cellOf) {
      from[cell + 1]++;
    }
    for (int cell = 1; cell < from.length; cell++) {
      from[cell] += from[cell - 1];
    }
    int[] next = from.clone();
    int[] sorted = new int[values.length];
    for (int value = 0; value < values.length; value++) {
      sorted[next[cellOf[value]]++] = value;
    }
    return sorted;
  }

  Layout layout(List<Factor> owned, int[] blockOf) {
    var blocks = new ArrayList<Layout.Block>();
    double sumLog = 0;
    int cells = from.length - 1;
    for (int cell = 0; cell < cells; ) {
      int end = cell;
      int block = blockOf[order[from[cell]]];
      while (end < cells && blockOf[order[from[end]]] == block) {
        sumLog += Math.log(from[end + 1] - from[end]);
        end++;
      }
      blocks.add(block(owned, cell, end));
      cell = end;
    }
    return new Layout(values.length, fixed, owned, crossing, start, within, blocks, sumLog, cells);
  }

  private Layout.Block block(List<Factor> owned, int first, int end) {
    int cells = end - first;
    double[] counts = new double[cells];
    int[][] levels = new int[owned.size()][cells];
    int most = (from[end] - from[first]) * (fixed.columns().length + crossing.size()) + cells;
    int[] columns = new int[most];
    double[] entries = new double[most];
    int[] rows = new int[cells + 1];
    for (int c = 0; c < cells; c++) {
      int cell = first + c;
      counts[c] = from[cell + 1] - from[cell];
      for (int t = 0; t < owned.size(); t++) {
        levels[t][c] = owned.get(t).codes()[order[from[cell]]];
      }
      rows[c + 1] = row(cell, rows[c], columns, entries);
    }
    return Layout.Block.of(counts, new Layout.SparseRows(rows, columns, entries), levels);
  }

  /** Sums a cell into a sparse row of means, and its cross-products about them into the within. */
  private int row(int cell, int begin, int[] columns, double[] entries) {
    int end = begin;
    int count = from[cell + 1] - from[cell];
    for (int i = from[cell]; i < from[cell + 1]; i++) {
      int value = order[i];
      for (int f = 0; f < fixed.columns().length; f++) {
        end = add(fixed.column(f, value), begin, end, columns, entries);
      }
      for (int t = 0; t < crossing.size(); t++) {
        int column = start[t] + crossing.get(t).codes()[value];
        end = add(column, begin, end, columns, entries);
      }
    }
    for (int at = begin; at < end; at++) {
      entries[at] /= count;
    }
    double mean = 0;
    for (int i = from[cell]; i < from[cell + 1]; i++) {
      mean += values[order[i]] / count;
    }
    columns[end] = border;
    entries[end++] = mean;
    if (count > 1) {
      spread(cell, begin, end, columns, entries);
    }
    return end;
  }

  /** Counts one more value under a column of the row, which may be new to it. */
  private static int add(int column, int begin, int end, int[] columns, double[] entries) {
    if (column < 0) {
      return end;
    }
    for (int at = begin; at < end; at++) {
      if (columns[at] == column) {
        entries[at]++;
        return end;
      }
    }
    columns[end] = column;
    entries[end] = 1;
    return end + 1;
  }

  /** Adds Σ (b − b̄)(b − b̄)' of one cell, over the columns that vary in it. */
  private void spread(int cell, int begin, int end, int[] columns, double[] entries) {
    int width = end - begin;
    double[] off = new double[width];
    for (int i = from[cell]; i < from[cell + 1]; i++) {
      for (int a = 0; a < width; a++) {
        off[a] = -entries[begin + a];
      }
      int value = order[i];
      off[width - 1] += values[value];
      for (int f = 0; f < fixed.columns().length; f++) {
        raise(fixed.column(f, value), begin, end, columns, off);
      }
      for (int t = 0; t < crossing.size(); t++) {
        raise(start[t] + crossing.get(t).codes()[value], begin, end, columns, off);
      }
      for (int a = 0; a < width; a++) {
        for (int b = 0; off[a] != 0 && b < width; b++) {
          within.data[columns[begin + a] * (border + 1) + columns[begin + b]] += off[a] * off[b];
        }
      }
    }
  }

  private static void raise(int column, int begin, int end, int[] columns, double[] off) {
    for (int at = begin; at < end; at++) {
      if (columns[at] == column) {
        off[at - begin]++;
        return;
      }
    }
  }
}
