package trialwood.trial;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A trial as it is planned.
 *
 * @param objective the question it is to answer
 * @param seed what the layout is drawn from; the same seed draws the same layout
 * @param blocks at each site
 * @param spacingMm between plants
 */
public record NewTrial(
    UUID cropId,
    String code,
    String name,
    @Nullable String objective,
    @Nullable Long seed,
    int blocks,
    int plantsPerPlot,
    @Nullable Integer spacingMm) {}
