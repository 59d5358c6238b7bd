package trialwood.container;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Plants found dead. */
public record NewLoss(LocalDate on, int number, String reason, @Nullable UUID personId) {}
