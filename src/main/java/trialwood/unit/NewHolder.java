package trialwood.unit;

import java.util.UUID;

/** Whose a unit is said to have been. */
public record NewHolder(UUID unitId, UUID accessionId) {}
