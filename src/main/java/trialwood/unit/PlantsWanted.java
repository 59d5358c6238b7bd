package trialwood.unit;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Said before plants are taken out of a unit into pots: who keeps the unit's counts adds what is
 * unusual about it, a sentence each.
 *
 * @param on the day of potting
 * @param inAll plants potted out of the unit by then, these among them
 * @param unusual grows while it is heard
 */
public record PlantsWanted(UUID unitId, LocalDate on, long inAll, List<String> unusual) {}
