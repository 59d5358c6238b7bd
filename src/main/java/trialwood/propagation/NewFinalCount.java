package trialwood.propagation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A final count as it is said.
 *
 * @param rooted rooted ones in the tray, score 3 or better
 * @param takenOut cuttings that left the tray before
 * @param rootScore most of the tray, 0 to 5
 * @param settles why this count takes the place of every earlier one; absent for a first count
 */
public record NewFinalCount(
    LocalDate on,
    int rooted,
    int aliveWithoutRoots,
    int dead,
    int takenOut,
    @Nullable Integer rootScore,
    @Nullable String note,
    @Nullable String settles) {

  int sum() {
    return rooted + aliveWithoutRoots + dead + takenOut;
  }
}
