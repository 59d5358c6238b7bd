package trialwood.container;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A lot as somebody graded it: its plants, its root balls, or both.
 *
 * @param a plants that can be sold as they are; the three grades are given together or not at all
 * @param b plants that need another season or a cut
 * @param c plants that will not be sold
 * @param rootBall 0 to 5, see {@link RootBall}
 */
public record NewGrade(
    LocalDate on,
    @Nullable Integer a,
    @Nullable Integer b,
    @Nullable Integer c,
    @Nullable Integer rootBall,
    @Nullable UUID personId) {

  boolean hasPlants() {
    return a != null && b != null && c != null;
  }

  int graded() {
    return a == null || b == null || c == null ? 0 : a + b + c;
  }
}
