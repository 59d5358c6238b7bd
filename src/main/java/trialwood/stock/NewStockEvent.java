package trialwood.stock;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What happened to a stock plant.
 *
 * @param place where it stands now, of a move
 * @param agent what it was tested for, and {@code result}: of a test
 * @param note of a death what it died of
 */
public record NewStockEvent(
    LocalDate on,
    StockEvent.Kind kind,
    @Nullable String place,
    @Nullable String agent,
    StockEvent.@Nullable Result result,
    @Nullable String note,
    @Nullable UUID personId) {}
