package trialwood.propagation;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

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
    @Nullable BigDecimal bottomHeatC,
    @Nullable String cutting,
    @Nullable Integer lengthMm,
    Treatment treatment,
    @Nullable Integer dipS,
    @Nullable String medium,
    @Nullable String note) {}
