package trialwood.stock;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A plant that is kept for cuttings from a day on.
 *
 * @param number of its accession's stock plants; free again when the plant that bore it is dead
 * @param originBatchId the batch it was rooted in, if it was
 * @param originUnitId the lot or plant it was before, if no batch is named
 */
public record NewStockPlant(
    String label,
    UUID accessionId,
    int number,
    LocalDate since,
    String place,
    @Nullable UUID originBatchId,
    @Nullable UUID originUnitId,
    @Nullable String note,
    @Nullable UUID personId) {}
