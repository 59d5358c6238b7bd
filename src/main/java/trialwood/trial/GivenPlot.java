package trialwood.trial;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A plot that was laid out, by the tool or elsewhere.
 *
 * @param label as on its stake
 * @param accessionId the entry that stands in it
 * @param row and {@code column}: its place on the ground, where known
 */
public record GivenPlot(
    String label,
    UUID siteId,
    UUID accessionId,
    int block,
    @Nullable Integer row,
    @Nullable Integer column,
    int plants) {}
