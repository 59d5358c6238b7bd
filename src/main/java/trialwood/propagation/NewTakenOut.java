package trialwood.propagation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Cuttings that leave a tray early, as it is said.
 *
 * @param rooted whether they had roots
 */
public record NewTakenOut(
    LocalDate on, int number, boolean rooted, TakenOut.Fate fate, @Nullable String note) {}
