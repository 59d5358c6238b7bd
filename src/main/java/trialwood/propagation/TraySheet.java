package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.unit.Doubt;
import trialwood.unit.Tie;

/** Everything on record about one tray. */
public record TraySheet(
    TrayLine line,
    Batch batch,
    Tray tray,
    List<TrayLook> looks,
    List<TakenOut> takenOut,
    TakenSoFar taken,
    List<FinalCount> counts,
    List<FinalCount> standing,
    List<Weaning> weanings,
    List<TrayRuling> rulings,
    List<Tie> ties,
    List<Doubt> doubts) {

  /** The last look, which the next person wants in sight. */
  public @Nullable TrayLook lastLook() {
    return looks.isEmpty() ? null : looks.get(looks.size() - 1);
  }

  /** The day of the last mist, once somebody has noted it. */
  public @Nullable LocalDate lastMist() {
    return weanings.isEmpty() ? null : weanings.get(weanings.size() - 1).lastMist();
  }

  public boolean isStanding(FinalCount count) {
    return standing.stream()
        .anyMatch(it -> it == count || it.id() != null && it.id().equals(count.id()));
  }
}
