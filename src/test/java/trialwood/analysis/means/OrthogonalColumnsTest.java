package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrthogonalColumnsTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void directions_stand_upright_and_give_the_columns_back(long seed) {
    double[][] columns = nearlyParallel(new SplittableRandom(seed), 6, 20);
    OrthogonalColumns basis = OrthogonalColumns.of(columns);
    assertThat(basis.rank()).isEqualTo(6);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j <= i; j++) {
        assertThat(OrthogonalColumns.dot(basis.directions()[i], basis.directions()[j]))
            .isCloseTo(i == j ? 1 : 0, within(1e-14));
      }
      for (int row = 0; row < 20; row++) {
        double sum = 0;
        for (int k = 0; k <= i; k++) {
          sum += basis.lower()[i * 6 + k] * basis.directions()[k][row];
        }
        assertThat(sum).isCloseTo(columns[i][row], within(1e-13));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {6, 7, 8})
  void a_column_that_is_a_sum_of_others_is_set_aside_with_its_parts(long seed) {
    double[][] columns = nearlyParallel(new SplittableRandom(seed), 4, 12);
    for (int row = 0; row < 12; row++) {
      columns[2][row] = 2 * columns[0][row] - 3 * columns[1][row];
    }
    OrthogonalColumns basis = OrthogonalColumns.of(columns);
    assertThat(basis.kept()).containsExactly(0, 1, 3);
    assertThat(basis.aliased()).containsExactly(2);
    assertThat(basis.aliasing()[0]).containsExactly(new double[] {2, -3, 0}, within(1e-8));
  }

  /** Columns that differ from one another in the fourth digit only. */
  private static double[][] nearlyParallel(SplittableRandom random, int columns, int rows) {
    double[][] matrix = new double[columns][rows];
    for (int row = 0; row < rows; row++) {
      double common = random.nextDouble();
      for (double[] column : matrix) {
        column[row] = common + 1e-4 * random.nextGaussian();
      }
    }
    return matrix;
  }
}
