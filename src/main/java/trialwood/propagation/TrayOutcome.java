package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How one counted tray stands on a day, read through the tie that held when it was counted.
 *
 * @param isCheck whether the accession is the run's bench check
 * @param rooted all that rooted of what was stuck
 * @param leftRooted rooted ones that the final count left in the tray
 * @param alive14 alive two weeks after the last mist; absent while nobody has looked
 * @param voidReason why it counts for nothing; absent while it counts
 */
record TrayOutcome(
    UUID runId,
    String run,
    LocalDate runFrom,
    int floorPercent,
    UUID accessionId,
    boolean isCheck,
    UUID trayId,
    String tray,
    LocalDate stuckOn,
    LocalDate countedOn,
    int stuck,
    int rooted,
    int leftRooted,
    @Nullable Integer rootScore,
    @Nullable Integer alive14,
    @Nullable String voidReason) {

  boolean counts() {
    return voidReason == null;
  }
}
