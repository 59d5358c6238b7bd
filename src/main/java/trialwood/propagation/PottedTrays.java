package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import trialwood.unit.PlantsTaken;
import trialwood.unit.PlantsWanted;
import trialwood.web.Measures;

/** Asks when more is potted out of a tray than its last count left alive. */
@Component
class PottedTrays {

  private final Trays trays;
  private final TrayRecords records;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;

  PottedTrays(
      Trays trays,
      TrayRecords records,
      TakenOuts takenOuts,
      FinalCounts counts,
      Weanings weanings) {
    this.trays = trays;
    this.records = records;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
  }

  /**
   * What can be potted, and by which record.
   *
   * @param weaned whether somebody looked at them off the mist
   */
  private record Left(int alive, boolean weaned, String words) {}

  @EventListener
  void potted(PlantsTaken taken) {
    if (taken.checked() != null) {
      return;
    }
    left(taken.unitId(), taken.on())
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

  @EventListener
  void wanted(PlantsWanted wanted) {
    Optional<Left> left = left(wanted.unitId(), wanted.on());
    left.filter(it -> wanted.inAll() > it.alive())
        .ifPresent(
            it ->
                wanted
                    .unusual()
                    .add(
                        "%d to pot, but %s. Where do the others come from?"
                            .formatted(wanted.inAll(), it.words())));
    if (trays.existsById(wanted.unitId()) && left.filter(Left::weaned).isEmpty()) {
      wanted.unusual().add("Nobody looked at these plants off the mist. Is weaning done?");
    }
  }

  private Optional<Left> left(UUID tray, LocalDate day) {
    List<FinalCount> closed = counts.standing(tray);
    if (closed.size() != 1) {
      return Optional.empty();
    }
    int early =
        takenOuts.standing(tray).stream()
            .filter(out -> out.fate() == TakenOut.Fate.POTTED)
            .mapToInt(TakenOut::number)
            .sum();
    String beside = early == 0 ? "" : " and %d potted early".formatted(early);
    Optional<Weaning> weaned =
        weanings.standing(tray).stream()
            .filter(weaning -> !weaning.onDate().isAfter(day))
            .reduce((earlier, later) -> later);
    return Optional.of(
        weaned
            .map(
                weaning ->
                    new Left(
                        weaning.alive() + early,
                        true,
                        "%d alive off the mist on %s%s"
                            .formatted(weaning.alive(), Measures.day(weaning.onDate()), beside)))
            .orElseGet(
                () ->
                    new Left(
                        closed.get(0).rooted() + early,
                        false,
                        "the final count left %d rooted%s"
                            .formatted(closed.get(0).rooted(), beside))));
  }
}
