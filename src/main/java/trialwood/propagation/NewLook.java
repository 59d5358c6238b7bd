package trialwood.propagation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * An interim look as it is said.
 *
 * @param lifted plugs lifted
 * @param rooted rooted ones of those lifted
 * @param alive cuttings alive in the whole tray
 * @param deadRemoved dead cuttings thrown out at this look
 */
public record NewLook(
    LocalDate on, int lifted, int rooted, int alive, int deadRemoved, @Nullable String note) {}
