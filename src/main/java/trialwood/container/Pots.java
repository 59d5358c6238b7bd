package trialwood.container;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The pots of a new lot.
 *
 * @param classId their container class
 * @param litres true volume of one pot
 * @param on the day they were filled
 * @param number of pots with a plant
 * @param yard where they stand
 */
public record Pots(
    UUID classId,
    @Nullable BigDecimal litres,
    LocalDate on,
    int number,
    @Nullable String yard,
    @Nullable String note) {

  static final BigDecimal LARGEST = new BigDecimal("1000");
}
