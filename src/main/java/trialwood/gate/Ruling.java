package trialwood.gate;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;

/**
 * What a person decides of a candidate at a gate.
 *
 * @param reason asked for where the choice goes against the line
 * @param holdUntil the day on which a held candidate is looked at again
 * @param personId who decides; none when nobody is named
 * @param on the day of the decision, which may be past
 */
public record Ruling(
    UUID accessionId,
    Stage gate,
    Choice choice,
    @Nullable String reason,
    @Nullable LocalDate holdUntil,
    @Nullable UUID personId,
    LocalDate on) {}
