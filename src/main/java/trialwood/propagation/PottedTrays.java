package trialwood.propagation;

import java.util.List;
import java.util.Optional;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import trialwood.unit.PlantsTaken;
import trialwood.web.Measures;

/** Asks when more is potted out of a tray than its last count left alive. */
@Component
class PottedTrays {

  private final TrayRecords records;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;

  PottedTrays(TrayRecords records, TakenOuts takenOuts, FinalCounts counts, Weanings weanings) {
    this.records = records;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
  }

  /** What can be potted, and by which record. */
  private record Left(int alive, String words) {}

  @EventListener
  void potted(PlantsTaken taken) {
    left(taken)
        .filter(left -> taken.inAll() > left.alive())
        .ifPresent(
            left ->
                records.ask(
                    taken.unitId(),
                    taken.on(),
                    "%d potted, but %s. Where do the others come from?"
                        .formatted(taken.inAll(), left.words()),
                    taken.recorded()));
  }

  private Optional<Left> left(PlantsTaken taken) {
    List<FinalCount> closed = counts.standing(taken.unitId());
    if (closed.size() != 1) {
      return Optional.empty();
    }
    int early =
        takenOuts.standing(taken.unitId()).stream()
            .filter(out -> out.fate() == TakenOut.Fate.POTTED)
            .mapToInt(TakenOut::number)
            .sum();
    String beside = early == 0 ? "" : " and %d potted early".formatted(early);
    Optional<Weaning> weaned =
        weanings.standing(taken.unitId()).stream()
            .filter(weaning -> !weaning.onDate().isAfter(taken.on()))
            .reduce((earlier, later) -> later);
    return Optional.of(
        weaned
            .map(
                weaning ->
                    new Left(
                        weaning.alive() + early,
                        "%d alive off the mist on %s%s"
                            .formatted(weaning.alive(), Measures.day(weaning.onDate()), beside)))
            .orElseGet(
                () ->
                    new Left(
                        closed.get(0).rooted() + early,
                        "the final count left %d rooted%s"
                            .formatted(closed.get(0).rooted(), beside))));
  }
}
