package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tray as a bench list shows it.
 *
 * @param standingCounts final counts that stand; two or more contradict each other
 * @param rooted all that rooted, where exactly one count stands
 */
public record TrayLine(
    UUID trayId,
    String tray,
    String run,
    String accession,
    UUID accessionId,
    @Nullable String talkName,
    boolean isCheck,
    @Nullable String block,
    @Nullable String place,
    LocalDate stuckOn,
    int stuck,
    @Nullable LocalDate lastLook,
    int standingCounts,
    @Nullable Integer rooted,
    @Nullable Integer alive14,
    @Nullable String voidReason) {

  public boolean isOpen() {
    return standingCounts == 0 && voidReason == null;
  }

  /** Whether its count stands, so that tables are made from it. */
  public boolean isCounted() {
    return rooted != null && voidReason == null;
  }

  public boolean isInConflict() {
    return standingCounts > 1;
  }
}
