package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.record.CorrectableFact;
import trialwood.record.Fact;
import trialwood.record.Recorded;
import trialwood.unit.Doubt;
import trialwood.unit.Tie;

/**
 * Everything on record about one tray, with what was replaced.
 *
 * @param standing the final counts that nothing has superseded
 * @param initials of the persons named in these records
 */
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
    List<Doubt> doubts,
    Map<UUID, String> initials) {

  /** The last look, which the next person wants in sight. */
  public @Nullable TrayLook lastLook() {
    return newest(looks);
  }

  /** The day of the last mist, once somebody has noted it. */
  public @Nullable LocalDate lastMist() {
    Weaning last = newest(weanings);
    return last == null ? null : last.lastMist();
  }

  private <F extends CorrectableFact> @Nullable F newest(List<F> facts) {
    return facts.stream()
        .filter(fact -> !isReplaced(fact))
        .reduce((earlier, later) -> later)
        .orElse(null);
  }

  /** Whether a look or a weaning was corrected by another. */
  public boolean isReplaced(CorrectableFact fact) {
    return Stream.of(looks, weanings, takenOut)
        .flatMap(List::stream)
        .anyMatch(it -> fact.id() != null && fact.id().equals(it.supersedesId()));
  }

  /** Who a record comes from: the person's initials, or else the account that was signed in. */
  public String by(Fact fact) {
    Recorded recorded = fact.recorded();
    return recorded.personId() == null
        ? recorded.account()
        : initials.getOrDefault(recorded.personId(), recorded.account());
  }

  public boolean isStanding(FinalCount count) {
    return standing.stream()
        .anyMatch(it -> it == count || it.id() != null && it.id().equals(count.id()));
  }
}
