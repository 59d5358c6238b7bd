package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Standard errors of variances, from the curvature of the restricted likelihood at its best point:
 * expected information ½ tr(PVₖPVₗ), observed information y'PVₖPVₗPy − ½ tr(PVₖPVₗ). A variance of
 * 0 lies on the edge, where no curvature tells an error: it has none and the others are as if its
 * term were not there.
 *
 * @param expected by term, in the order of {@link MixedFit#variances()}
 * @param observed likewise
 */
public record VarianceErrors(List<OptionalDouble> expected, List<OptionalDouble> observed) {

  static VarianceErrors of(Evaluation at) {
    var slope = new Slope(at);
    int[] inside =
        IntStream.range(0, at.variances().length).filter(k -> at.variances()[k] > 0).toArray();
    DMatrixRMaj traces = traces(at, slope);
    DMatrixRMaj average = slope.averageInformation();
    var expected = new DMatrixRMaj(inside.length, inside.length);
    var observed = new DMatrixRMaj(inside.length, inside.length);
    for (int i = 0; i < inside.length; i++) {
      for (int j = 0; j < inside.length; j++) {
        double half = traces.get(inside[i], inside[j]) / 2;
        expected.set(i, j, half);
        observed.set(i, j, average.get(inside[i], inside[j]) - half);
      }
    }
    int terms = at.variances().length;
    return new VarianceErrors(errors(expected, inside, terms), errors(observed, inside, terms));
  }

  /** tr(PVₖPVₗ) = Σ of the squares of Z'ₖPZₗ; for the residual from Σ σₗ² tr(PVₖPVₗ) = tr(PVₖ). */
  private static DMatrixRMaj traces(Evaluation at, Slope slope) {
    Layout layout = at.layout();
    int[] start = starts(layout);
    int terms = start.length - 1;
    DMatrixRMaj projected = LevelProducts.ofAll(at).projected(at.errorCovariance());
    var traces = new DMatrixRMaj(terms + 1, terms + 1);
    for (int k = 0; k < terms; k++) {
      for (int l = 0; l < terms; l++) {
        traces.set(k, l, squares(projected, start[k], start[k + 1], start[l], start[l + 1]));
      }
    }
    for (int k = 0; k <= terms; k++) {
      double rest = slope.traces()[k];
      for (int l = 0; l < terms; l++) {
        rest -= at.variances()[l] * traces.get(k, l);
      }
      traces.set(k, terms, rest / at.residual());
      traces.set(terms, k, rest / at.residual());
    }
    return traces;
  }

  /** First row of each random term, owned then crossing, and one past the last. */
  private static int[] starts(Layout layout) {
    int[] owned = LevelProducts.starts(layout);
    int[] start = Arrays.copyOf(owned, owned.length + layout.crossing().size());
    for (int t = 0; t < layout.crossing().size(); t++) {
      start[owned.length + t] =
          start[owned.length + t - 1] + layout.crossing().get(t).levels().size();
    }
    return start;
  }

  private static double squares(DMatrixRMaj matrix, int top, int bottom, int left, int right) {
    double sum = 0;
    for (int i = top; i < bottom; i++) {
      for (int j = left; j < right; j++) {
        sum += matrix.get(i, j) * matrix.get(i, j);
      }
    }
    return sum;
  }

  private static List<OptionalDouble> errors(DMatrixRMaj information, int[] inside, int terms) {
    var errors = new ArrayList<OptionalDouble>();
    var inverse = information.copy();
    boolean invertible = CommonOps_DDRM.invert(inverse);
    for (int k = 0; k < terms; k++) {
      int place = Arrays.binarySearch(inside, k);
      double variance = place < 0 || !invertible ? -1 : inverse.get(place, place);
      errors.add(variance > 0 ? OptionalDouble.of(Math.sqrt(variance)) : OptionalDouble.empty());
    }
    return List.copyOf(errors);
  }
}
