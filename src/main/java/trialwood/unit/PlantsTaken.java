package trialwood.unit;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Checked;
import trialwood.record.Recorded;

/**
 * Said when plants were taken out of a unit into pots, within the same transaction: who keeps the
 * unit's counts may ask about what does not agree with them.
 *
 * @param on the day of potting
 * @param inAll plants potted out of the unit so far, these among them
 * @param checked what was asked about it beforehand and answered; then nothing is left to ask
 */
public record PlantsTaken(
    UUID unitId, LocalDate on, long inAll, @Nullable Checked checked, Recorded recorded) {}
