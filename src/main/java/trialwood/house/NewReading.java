package trialwood.house;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What was read off in a house, or set.
 *
 * @param airCelsius air, °C
 * @param mediumCelsius medium in tray or pot, °C
 * @param humidity relative, %
 * @param shade of the full light, %
 * @param mistSeconds seconds that the mist runs
 * @param mistIntervalSeconds seconds from one start to the next
 */
public record NewReading(
    Instant readAt,
    @Nullable BigDecimal airCelsius,
    @Nullable BigDecimal mediumCelsius,
    @Nullable Integer humidity,
    @Nullable Integer shade,
    @Nullable Integer mistSeconds,
    @Nullable Integer mistIntervalSeconds,
    @Nullable String note) {

  boolean saysSomething() {
    return airCelsius != null
        || mediumCelsius != null
        || humidity != null
        || shade != null
        || mistSeconds != null
        || note != null;
  }
}
