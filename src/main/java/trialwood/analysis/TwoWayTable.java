package trialwood.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A complete table of means, such as entry × environment or variety × year, split into
 *
 * <pre>x_ij = grand mean + row effect i + column effect j + interaction ij</pre>
 *
 * Every cell weighs the same. Sums of squares are those of the cell means: SS(rows) = q Σ(row
 * effect)², SS(columns) = g Σ(column effect)², SS(interaction) = Σ(interaction)², for g rows and q
 * columns; a sum that is no more than rounding is 0.
 *
 * <p>Source: Fisher, R. A. and Mackenzie, W. A. (1923) Studies in crop variation II. Journal of
 * Agricultural Science 13, 311–320
 */
public final class TwoWayTable {

  private static final double ROUNDING = 1e-26;

  private final List<String> rows;
  private final List<String> columns;
  private final double[][] values;
  private final double[] rowMeans;
  private final double[] columnMeans;
  private final double grandMean;

  /** Sum of squares below which a difference is only rounding. */
  private final double nothing;

  /**
   * One value.
   *
   * @param row its entry, variety or family
   * @param column its environment or year
   * @param value finite
   */
  public record Cell(String row, String column, double value) {

    public Cell {
      Refuse.unlessFinite(value, "value of " + row + " in " + column);
    }
  }

  private TwoWayTable(List<String> rows, List<String> columns, double[][] values) {
    this.rows = rows;
    this.columns = columns;
    this.values = values;
    this.rowMeans = new double[rows.size()];
    this.columnMeans = new double[columns.size()];
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        rowMeans[i] += values[i][j] / columns.size();
        columnMeans[j] += values[i][j] / rows.size();
      }
    }
    this.grandMean = Arrays.stream(rowMeans).average().orElseThrow();
    this.nothing =
        ROUNDING * Arrays.stream(values).flatMapToDouble(Arrays::stream).map(x -> x * x).sum();
  }

  /**
   * The table of cell means; several values of one cell are averaged. Rows and columns keep the
   * order in which they first appear. Lacking with fewer than two rows or columns, or where a cell
   * has no value: then the rows cannot be compared over the same columns.
   */
  public static Answer<TwoWayTable> of(Collection<Cell> cells) {
    var rowNames = new LinkedHashSet<String>();
    var columnNames = new LinkedHashSet<String>();
    for (Cell cell : cells) {
      rowNames.add(cell.row());
      columnNames.add(cell.column());
    }
    if (rowNames.size() < 2 || columnNames.size() < 2) {
      return Answer.lacking("A comparison needs at least two lines seen in two places or years.");
    }
    List<String> rows = List.copyOf(rowNames);
    List<String> columns = List.copyOf(columnNames);
    double[][] sums = new double[rows.size()][columns.size()];
    int[][] counts = new int[rows.size()][columns.size()];
    for (Cell cell : cells) {
      int i = rows.indexOf(cell.row());
      int j = columns.indexOf(cell.column());
      sums[i][j] += cell.value();
      counts[i][j]++;
    }
    var missing = new ArrayList<String>();
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        if (counts[i][j] == 0) {
          missing.add(rows.get(i) + " in " + columns.get(j));
        }
        sums[i][j] /= Math.max(1, counts[i][j]);
      }
    }
    return missing.isEmpty()
        ? Answer.known(new TwoWayTable(rows, columns, sums))
        : Answer.lacking("No value of " + String.join(", ", missing) + ".");
  }

  public List<String> rows() {
    return rows;
  }

  public List<String> columns() {
    return columns;
  }

  /** The mean of a cell, by the positions of its row and column. */
  public double at(int row, int column) {
    return values[row][column];
  }

  /** A row's cell means in the order of the columns. */
  public double[] row(int row) {
    return values[row].clone();
  }

  public double rowMean(int row) {
    return rowMeans[row];
  }

  /** The column's mean less the grand mean: a better or poorer place. */
  public double columnEffect(int column) {
    return columnMeans[column] - grandMean;
  }

  public double[] columnEffects() {
    return Arrays.stream(columnMeans).map(mean -> mean - grandMean).toArray();
  }

  public double grandMean() {
    return grandMean;
  }

  /** What row and column alone do not explain of a cell. */
  public double interaction(int row, int column) {
    return values[row][column] - rowMeans[row] - columnMeans[column] + grandMean;
  }

  public double rowSquares() {
    return orNothing(
        columns.size()
            * Arrays.stream(rowMeans).map(mean -> (mean - grandMean) * (mean - grandMean)).sum());
  }

  public double columnSquares() {
    return orNothing(
        rows.size() * Arrays.stream(columnEffects()).map(effect -> effect * effect).sum());
  }

  public double interactionSquares() {
    double squares = 0;
    for (int i = 0; i < rows.size(); i++) {
      squares += interactionSquares(i);
    }
    return orNothing(squares);
  }

  /** A row's own part of the interaction. */
  public double interactionSquares(int row) {
    double squares = 0;
    for (int j = 0; j < columns.size(); j++) {
      squares += interaction(row, j) * interaction(row, j);
    }
    return squares;
  }

  private double orNothing(double squares) {
    return squares <= nothing ? 0 : squares;
  }

  /** (g − 1)(q − 1). */
  public int interactionDf() {
    return (rows.size() - 1) * (columns.size() - 1);
  }

  /**
   * The position of a row by its name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public int rowOf(String name) {
    int row = rows.indexOf(name);
    Refuse.unless(row >= 0, "%s is not in the table.", name);
    return row;
  }
}
