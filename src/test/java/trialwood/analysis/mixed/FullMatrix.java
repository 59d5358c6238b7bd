package trialwood.analysis.mixed;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** Matrix algebra as it is written, each step a matrix of its own. */
record FullMatrix(DMatrixRMaj entries) {

  static FullMatrix zero(int rows, int columns) {
    return new FullMatrix(new DMatrixRMaj(rows, columns));
  }

  static FullMatrix identity(int size) {
    return new FullMatrix(CommonOps_DDRM.identity(size));
  }

  static FullMatrix column(double... values) {
    return new FullMatrix(new DMatrixRMaj(values.length, 1, true, values));
  }

  FullMatrix times(FullMatrix other) {
    var product = new DMatrixRMaj(rows(), other.columns());
    CommonOps_DDRM.mult(entries, other.entries, product);
    return new FullMatrix(product);
  }

  FullMatrix times(double factor) {
    var product = new DMatrixRMaj(rows(), columns());
    CommonOps_DDRM.scale(factor, entries, product);
    return new FullMatrix(product);
  }

  FullMatrix plus(FullMatrix other) {
    var sum = new DMatrixRMaj(rows(), columns());
    CommonOps_DDRM.add(entries, other.entries, sum);
    return new FullMatrix(sum);
  }

  FullMatrix minus(FullMatrix other) {
    return plus(other.times(-1));
  }

  FullMatrix transposed() {
    return new FullMatrix(CommonOps_DDRM.transpose(entries, null));
  }

  FullMatrix inverse() {
    var inverse = new DMatrixRMaj(rows(), columns());
    if (!CommonOps_DDRM.invert(entries, inverse)) {
      throw new IllegalArgumentException("This matrix has no inverse.");
    }
    return new FullMatrix(inverse);
  }

  double logDeterminant() {
    return Math.log(CommonOps_DDRM.det(entries));
  }

  double trace() {
    return CommonOps_DDRM.trace(entries);
  }

  double get(int row, int column) {
    return entries.get(row, column);
  }

  void set(int row, int column, double value) {
    entries.set(row, column, value);
  }

  int rows() {
    return entries.numRows;
  }

  int columns() {
    return entries.numCols;
  }
}
