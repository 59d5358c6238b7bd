package trialwood.trial;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.observation.Reading;

/**
 * What was read off a plot.
 *
 * @param plotId the plot's unit
 */
public record PlotReading(
    UUID plotId,
    UUID traitId,
    LocalDate on,
    Reading reading,
    @Nullable String note,
    @Nullable UUID personId) {}
