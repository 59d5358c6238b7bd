package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * One interim look, as evidence of when cuttings rooted.
 *
 * @param alive in the whole tray
 * @param inTray stuck less what had been taken out by then
 */
record LookSample(
    String run,
    LocalDate runFrom,
    UUID accessionId,
    String tray,
    LocalDate onDate,
    LocalDate stuckOn,
    int lifted,
    int rooted,
    int alive,
    int inTray) {

  /** Days after sticking. */
  int day() {
    return Math.toIntExact(onDate.toEpochDay() - stuckOn.toEpochDay());
  }
}
