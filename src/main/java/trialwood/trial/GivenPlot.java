package trialwood.trial;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

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
    int plants) {

  /**
   * @throws trialwood.record.Refused when a number is impossible
   */
  public GivenPlot {
    Check.that()
        .holds(block >= 1, "block", "Blocks are numbered from 1.")
        .holds(row == null || row >= 1, "row", "Rows are numbered from 1.")
        .holds(column == null || column >= 1, "column", "Columns are numbered from 1.")
        .holds(plants >= 1, "plants", "A plot has at least one plant.")
        .orRefuse();
  }
}
