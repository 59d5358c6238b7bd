package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The columns of the fixed effects: every level of the first factor (or one for all, where there is
 * none), then of each other factor all levels but the first. A column that the ones before it
 * explain is left out, and its level named as confounded.
 *
 * @param factors the fixed factors
 * @param columns for each factor, by level, its column; -1 where it has none
 * @param count how many columns are left
 * @param confounded levels without an effect of their own, such as {@code year 1932}
 */
record FixedPart(List<Factor> factors, int[][] columns, int count, List<String> confounded) {

  /** A column's share of its own square that the ones before it may leave and still explain it. */
  private static final double NOTHING_NEW = 1e-9;

  static FixedPart of(List<Factor> given, int size) {
    List<Factor> factors =
        given.isEmpty() ? List.of(new Factor("", List.of(""), new int[size])) : given;
    int[][] columns = new int[factors.size()][];
    int count = 0;
    for (int f = 0; f < factors.size(); f++) {
      columns[f] = new int[factors.get(f).levels().size()];
      for (int level = 0; level < columns[f].length; level++) {
        columns[f][level] = f > 0 && level == 0 ? -1 : count++;
      }
    }
    var all = new FixedPart(factors, columns, count, List.of());
    return factors.size() == 1 ? all : all.withoutConfounded(size);
  }

  /** The columns of one value, -1 where a factor gives it none. */
  int column(int factor, int value) {
    return columns[factor][factors.get(factor).codes()[value]];
  }

  /** Cholesky factor of X'X, column by column: a pivot that vanishes says nothing new. */
  private FixedPart withoutConfounded(int size) {
    double[][] cross = crossProducts(size);
    double[][] root = new double[count][count];
    boolean[] kept = new boolean[count];
    for (int j = 0; j < count; j++) {
      double left = cross[j][j];
      for (int i = 0; i < j; i++) {
        if (kept[i]) {
          double sum = cross[j][i];
          for (int k = 0; k < i; k++) {
            sum -= root[j][k] * root[i][k];
          }
          root[j][i] = sum / root[i][i];
          left -= root[j][i] * root[j][i];
        }
      }
      kept[j] = left > NOTHING_NEW * cross[j][j];
      root[j][j] = kept[j] ? Math.sqrt(left) : 1;
    }
    return numbered(kept);
  }

  private double[][] crossProducts(int size) {
    double[][] cross = new double[count][count];
    for (int value = 0; value < size; value++) {
      for (int f = 0; f < columns.length; f++) {
        int a = column(f, value);
        for (int g = 0; a >= 0 && g < columns.length; g++) {
          int b = column(g, value);
          if (b >= 0) {
            cross[a][b]++;
          }
        }
      }
    }
    return cross;
  }

  private FixedPart numbered(boolean[] kept) {
    int[] number = new int[count];
    int next = 0;
    for (int j = 0; j < count; j++) {
      number[j] = kept[j] ? next++ : -1;
    }
    var confounded = new ArrayList<String>();
    int[][] renumbered = new int[columns.length][];
    for (int f = 0; f < columns.length; f++) {
      Factor factor = factors.get(f);
      renumbered[f] = new int[columns[f].length];
      for (int level = 0; level < columns[f].length; level++) {
        int column = columns[f][level];
        renumbered[f][level] = column < 0 ? -1 : number[column];
        if (column >= 0 && number[column] < 0) {
          confounded.add(factor.name() + " " + factor.levels().get(level));
        }
      }
    }
    return new FixedPart(factors, renumbered, next, List.copyOf(confounded));
  }

  /** Weights on the columns for the mean of a level, every level of the other factors alike. */
  double[] meanOf(int target, int level) {
    double[] weights = new double[count];
    for (int f = 0; f < columns.length; f++) {
      if (f == target) {
        add(weights, columns[f][level], 1);
      } else {
        for (int column : columns[f]) {
          add(weights, column, 1.0 / columns[f].length);
        }
      }
    }
    return weights;
  }

  private static void add(double[] weights, int column, double weight) {
    if (column >= 0) {
      weights[column] += weight;
    }
  }

  @Override
  public String toString() {
    return "%s: %d columns %s".formatted(factors, count, Arrays.deepToString(columns));
  }
}
