package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Plants that move into larger pots.
 *
 * @param label of the new lot
 * @param plantIds the numbered plants among them; they keep their numbers
 */
public record NewShift(String label, Pots pots, List<UUID> plantIds, @Nullable UUID personId) {}
