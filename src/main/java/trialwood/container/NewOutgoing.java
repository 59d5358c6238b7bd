package trialwood.container;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Plants that left a lot.
 *
 * @param toWhom who has them now
 * @param agreement number or name of the paper they went under
 */
public record NewOutgoing(
    LocalDate on,
    int number,
    Way way,
    @Nullable String toWhom,
    @Nullable String agreement,
    @Nullable String purpose,
    @Nullable UUID personId) {}
