package trialwood.propagation;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tray where it stands on a day.
 *
 * @param benchId absent where no bench is on record for it
 * @param place along the bench; a number unless an older record says otherwise
 */
public record StandingTray(
    UUID trayId,
    String tray,
    UUID accessionId,
    String accession,
    boolean isCheck,
    String run,
    @Nullable UUID benchId,
    @Nullable String block,
    @Nullable String place,
    int cells,
    int stuck,
    LocalDate stuckOn) {

  /** Number of its place along the bench; zero where it has none. */
  public int placeNumber() {
    return place != null && place.matches("\\d{1,4}") ? Integer.parseInt(place) : 0;
  }
}
