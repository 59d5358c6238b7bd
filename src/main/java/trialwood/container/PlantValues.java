package trialwood.container;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.observation.Reading;

/**
 * One line of a measuring sheet.
 *
 * @param readings by trait
 * @param checked what was found when the plant was looked at again because a value was asked about;
 *     absent before anybody asked
 */
public record PlantValues(UUID plantId, Map<UUID, Reading> readings, @Nullable String checked) {}
