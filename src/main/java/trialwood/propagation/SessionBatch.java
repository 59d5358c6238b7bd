package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A batch in the list of what a run holds so far.
 *
 * @param cells of its trays
 * @param recorded looks, counts, rulings and takings on its trays
 * @param unplaced trays without a place on the bench
 * @param checked the answer to what was asked about it
 */
public record SessionBatch(
    UUID batchId,
    String code,
    UUID accessionId,
    String accession,
    boolean isCheck,
    Batch.Source source,
    int trays,
    int cells,
    int stuck,
    LocalDate stuckOn,
    int recorded,
    int unplaced,
    @Nullable String hormone,
    @Nullable Integer ppm,
    @Nullable String checked) {}
