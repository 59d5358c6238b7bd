package trialwood.propagation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Life off the mist as it is said.
 *
 * @param lastMist the day of the last mist
 * @param wilted wilted ones among the living
 * @param shock those that show shock, such as dropped leaves
 */
public record NewWeaning(
    LocalDate lastMist,
    LocalDate on,
    int alive,
    @Nullable Integer wilted,
    @Nullable Integer shock,
    @Nullable String note) {}
