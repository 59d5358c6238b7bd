package trialwood.correction;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.unit.Unit;

/**
 * Labels that did not tell the truth in some days.
 *
 * @param those the units with which {@code these} exchanged their labels; empty where they did not
 * @param accessionId whose {@code these} are, where labels were not exchanged
 * @param until the first day after them; {@link Period#OPEN} while it lasts
 */
record Mistake(
    List<Unit> these,
    List<Unit> those,
    @Nullable UUID accessionId,
    LocalDate from,
    LocalDate until) {}
