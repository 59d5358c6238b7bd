package trialwood.house;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A spray or other treatment as it was written down.
 *
 * @param endedAt when the last of it was applied
 * @param reEntryHours the re-entry interval that the label gives, in hours; 0 where it gives none
 * @param product as on the label
 * @param rate as mixed: 1.5 ml in 1 l
 * @param area what was treated: benches 1 to 3, the whole house
 * @param reason against what
 * @param licence of who applied it, where local rules ask for one
 */
public record NewSpray(
    Instant endedAt,
    int reEntryHours,
    String product,
    @Nullable String rate,
    String area,
    @Nullable String reason,
    @Nullable String licence) {}
