package trialwood.propagation;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Problem;

/**
 * A sticking run as it is set up.
 *
 * @param checkAccessionId the bench check that stands beside every batch
 * @param bottomHeatC temperature of the medium, °C
 * @param lengthMm length of a cutting, mm
 * @param dipS time in the hormone, seconds
 */
public record NewRun(
    String code,
    UUID cropId,
    LocalDate from,
    LocalDate to,
    UUID checkAccessionId,
    @Nullable String crew,
    @Nullable String bench,
    @Nullable String mist,
    Environment environment,
    @Nullable BigDecimal bottomHeatC,
    @Nullable String cutting,
    @Nullable Integer lengthMm,
    Treatment treatment,
    @Nullable Integer dipS,
    @Nullable String medium,
    @Nullable String note) {

  private static final BigDecimal COOLEST_USUAL = BigDecimal.valueOf(16);
  private static final BigDecimal WARMEST_USUAL = BigDecimal.valueOf(29);

  /** What is possible but unusual (common practice, no source). */
  public List<Problem> unusual() {
    return new Unusual()
        .ask(treatment.unusual(cutting, dipS, to))
        .ask(
            lengthMm != null && (lengthMm < 50 || lengthMm > 150),
            "length_mm",
            "%d mm: cuttings are usually 50 to 150 mm long.".formatted(lengthMm))
        .ask(
            bottomHeatC != null
                && (bottomHeatC.compareTo(COOLEST_USUAL) < 0
                    || bottomHeatC.compareTo(WARMEST_USUAL) > 0),
            "bottom_heat_c",
            "%s °C in the medium: roots come between 16 and 29.".formatted(bottomHeatC))
        .ask(environment.unusual())
        .list();
  }
}
