package trialwood.analysis.selection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.Answer;

/**
 * The mixed-model equations of records on the plants of a pedigree, all multiplied by σ²_E: first
 * the fixed effects, then the plants. Kept as the list of their entries that are not 0.
 */
final class MixedEquations {

  private static final int MOST_STEPS = 5_000;
  private static final double SETTLED = 1e-11;

  private final List<String> fixed;
  private final int size;
  private final List<Part> parts = new ArrayList<>();
  private final double[] right;

  private record Part(int row, int column, double value) {}

  /**
   * @param fixed names of the fixed effects
   * @param ratio σ²_E/σ²_A
   */
  MixedEquations(
      Pedigree pedigree,
      InverseRelationships inverse,
      List<String> fixed,
      Collection<PlantRecord> records,
      double ratio) {
    this.fixed = fixed;
    this.size = fixed.size() + pedigree.size();
    this.right = new double[size];
    for (PlantRecord line : records) {
      List<Part> row = new ArrayList<>();
      line.fixed().forEach((name, part) -> row.add(new Part(0, fixed.indexOf(name), part)));
      row.add(new Part(0, fixed.size() + pedigree.positionOf(line.plant()), 1));
      for (Part one : row) {
        right[one.column()] += one.value() * line.value();
        for (Part other : row) {
          parts.add(new Part(one.column(), other.column(), one.value() * other.value()));
        }
      }
    }
    inverse.forEach(
        (row, column, value) ->
            parts.add(new Part(fixed.size() + row, fixed.size() + column, value * ratio)));
  }

  List<String> fixed() {
    return fixed;
  }

  int size() {
    return size;
  }

  /** X′X. */
  DMatrixRMaj fixedPart() {
    DMatrixRMaj matrix = new DMatrixRMaj(fixed.size(), fixed.size());
    for (Part part : parts) {
      if (part.row() < fixed.size() && part.column() < fixed.size()) {
        matrix.add(part.row(), part.column(), part.value());
      }
    }
    return matrix;
  }

  DMatrixRMaj whole() {
    DMatrixRMaj matrix = new DMatrixRMaj(size, size);
    parts.forEach(part -> matrix.add(part.row(), part.column(), part.value()));
    return matrix;
  }

  DMatrixRMaj right() {
    return DMatrixRMaj.wrap(size, 1, right.clone());
  }

  /**
   * The solution by conjugate gradients, each equation scaled by its diagonal; lacking if it does
   * not settle.
   *
   * <p>Source: Hestenes, M. R. and Stiefel, E. (1952) Methods of conjugate gradients for solving
   * linear systems. Journal of Research of the National Bureau of Standards 49, 409–436
   */
  Answer<double[]> solved() {
    double[] scale = new double[size];
    parts.forEach(part -> scale[part.row()] += part.row() == part.column() ? part.value() : 0);
    double[] found = new double[size];
    double[] rest = right.clone();
    double[] direction = new double[size];
    double last = 1;
    double first = dot(right, right);
    for (int step = 0; step < MOST_STEPS; step++) {
      if (dot(rest, rest) <= SETTLED * SETTLED * first) {
        return Answer.known(found);
      }
      double[] scaled = new double[size];
      for (int i = 0; i < size; i++) {
        scaled[i] = rest[i] / scale[i];
      }
      double now = dot(rest, scaled);
      for (int i = 0; i < size; i++) {
        direction[i] = scaled[i] + (step == 0 ? 0 : now / last) * direction[i];
      }
      double[] image = times(direction);
      double length = now / dot(direction, image);
      for (int i = 0; i < size; i++) {
        found[i] += length * direction[i];
        rest[i] -= length * image[i];
      }
      last = now;
    }
    return Answer.lacking("The breeding values did not settle.");
  }

  private double[] times(double[] vector) {
    double[] product = new double[size];
    for (Part part : parts) {
      product[part.row()] += part.value() * vector[part.column()];
    }
    return product;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
