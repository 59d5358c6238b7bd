package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;

/** Products of symmetric matrices with vectors. */
final class Products {

  private Products() {}

  /** Ax. */
  static double[] times(DMatrixRMaj a, double[] x) {
    double[] product = new double[a.numRows];
    for (int i = 0; i < product.length; i++) {
      double sum = 0;
      for (int j = 0; j < x.length; j++) {
        sum += a.data[i * a.numCols + j] * x[j];
      }
      product[i] = sum;
    }
    return product;
  }

  /** x'Ay. */
  static double quadratic(DMatrixRMaj a, double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      if (x[i] != 0) {
        double row = 0;
        for (int j = 0; j < y.length; j++) {
          row += a.data[i * a.numCols + j] * y[j];
        }
        sum += x[i] * row;
      }
    }
    return sum;
  }

  /** x'y, over as many entries as {@code x} has. */
  static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }

  /** bⱼ'Pbⱼ of a border column that has no variance of its own. */
  static double quadratic(Evaluation at, int column) {
    double[] row = scaledRow(at, column);
    return at.system().get(column, column) - quadratic(at.scaledInverse(), row, row);
  }

  /** bⱼ'Py. */
  static double residual(Evaluation at, int column) {
    int border = at.layout().border();
    double sum = at.system().get(column, border);
    for (int j = 0; j < border; j++) {
      sum -= at.system().get(column, j) * at.effects()[j];
    }
    return sum;
  }

  private static double[] scaledRow(Evaluation at, int column) {
    double[] row = new double[at.layout().border()];
    for (int j = 0; j < row.length; j++) {
      row[j] = at.system().get(column, j) * at.scales()[j];
    }
    return row;
  }
}
