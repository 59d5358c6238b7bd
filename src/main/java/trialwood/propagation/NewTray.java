package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A tray as it is stuck: whose cuttings, how many, where on the bench. */
public record NewTray(
    String label,
    UUID accessionId,
    int cells,
    LocalDate stuckOn,
    int stuck,
    @Nullable String block,
    @Nullable String place,
    @Nullable UUID personId) {}
