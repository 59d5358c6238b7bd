package trialwood.analysis.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ejml.data.DMatrixRMaj;
import org.junit.jupiter.api.Test;
import trialwood.analysis.mixed.RandomEffect;

/** Cases whose answer is known without drawing; 4,000 draws leave an error of 0.008 at most. */
class BestThreeTest {

  private static final double DRAWN = 0.03;

  @Test
  void one_unsure_entry_below_three_sure_ones_must_outrun_them() {
    DMatrixRMaj errors = diagonal(1e-6, 1e-6, 1e-6, 4);
    double[] chances = chances(errors, Better.HIGHER, 0, 0, 0, -3);
    double outruns = NormalDistribution.of(0, 1).survivalProbability(1.5);
    assertThat(chances[3]).isCloseTo(outruns, within(DRAWN));
    assertThat(chances(errors, Better.LOWER, 0, 0, 0, 3)[3]).isCloseTo(outruns, within(DRAWN));
    assertThat(chances(errors, Better.HIGHER, 0, 0, 0, 3)[3]).isGreaterThan(0.9);
  }

  @Test
  void entries_alike_in_all_share_the_three_places() {
    for (double chance : chances(diagonal(1, 1, 1, 1, 1), Better.HIGHER, 2, 2, 2, 2, 2)) {
      assertThat(chance).isCloseTo(0.6, within(DRAWN));
    }
  }

  @Test
  void errors_that_all_share_change_no_place() {
    DMatrixRMaj shared = new DMatrixRMaj(4, 4);
    shared.fill(1);
    assertThat(chances(shared, Better.HIGHER, 0.3, 0.2, 0.1, 0))
        .containsExactly(new double[] {1, 1, 1, 0}, within(DRAWN));
    assertThat(chances(shared, Better.LOWER, 0.3, 0.2, 0.1, 0))
        .containsExactly(new double[] {0, 1, 1, 1}, within(DRAWN));
  }

  @Test
  void three_entries_or_fewer_are_all_among_the_best() {
    assertThat(chances(diagonal(1, 1), Better.HIGHER, 5, 0))
        .containsExactly(new double[] {1, 1}, within(1e-9));
  }

  private static double[] chances(DMatrixRMaj errors, Better better, double... effects) {
    List<RandomEffect> shown =
        IntStream.range(0, effects.length)
            .mapToObj(i -> new RandomEffect("E" + i, effects[i], errors.get(i, i), 0, 0.5))
            .toList();
    return new BestThree(errors, shown, better).chances();
  }

  private static DMatrixRMaj diagonal(double... variances) {
    DMatrixRMaj errors = new DMatrixRMaj(variances.length, variances.length);
    for (int i = 0; i < variances.length; i++) {
      errors.set(i, i, variances[i]);
    }
    return errors;
  }
}
