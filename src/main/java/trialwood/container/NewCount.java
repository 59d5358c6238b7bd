package trialwood.container;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A count as it was made.
 *
 * @param saleable of those alive; absent when nobody graded them
 */
public record NewCount(
    LocalDate on,
    int alive,
    @Nullable Integer saleable,
    @Nullable String note,
    @Nullable UUID personId) {}
