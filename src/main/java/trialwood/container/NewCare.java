package trialwood.container;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What was done to a lot.
 *
 * @param cutToCm height left by a pinch or a pruning
 * @param house where the lot was covered
 * @param lowestCelsius of the medium in the pots while they were covered, known when they are
 *     uncovered
 * @param diebackPercent of the length of the stems, seen when they are uncovered
 */
public record NewCare(
    LocalDate on,
    CareKind kind,
    @Nullable BigDecimal cutToCm,
    @Nullable String house,
    @Nullable BigDecimal lowestCelsius,
    @Nullable Integer diebackPercent,
    @Nullable UUID personId) {

  /** The shoots were cut, to this height if somebody measured it. */
  public static NewCare cut(
      LocalDate on, CareKind kind, @Nullable BigDecimal cutToCm, @Nullable UUID personId) {
    return new NewCare(on, kind, cutToCm, null, null, null, personId);
  }
}
