package trialwood.propagation;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.record.Fact;
import trialwood.unit.Doubts;
import trialwood.unit.Ties;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

/** Puts a tray's sheet together. */
@Component
public class TraySheets {

  private final Units units;
  private final BenchLists bench;
  private final Batches batches;
  private final Trays trays;
  private final TrayLooks looks;
  private final TakenOuts takenOuts;
  private final FinalCounts counts;
  private final Weanings weanings;
  private final TrayRulings rulings;
  private final Ties ties;
  private final Doubts doubts;
  private final Persons persons;

  TraySheets(
      Units units,
      BenchLists bench,
      Batches batches,
      Trays trays,
      TrayLooks looks,
      TakenOuts takenOuts,
      FinalCounts counts,
      Weanings weanings,
      TrayRulings rulings,
      Ties ties,
      Doubts doubts,
      Persons persons) {
    this.units = units;
    this.bench = bench;
    this.batches = batches;
    this.trays = trays;
    this.looks = looks;
    this.takenOuts = takenOuts;
    this.counts = counts;
    this.weanings = weanings;
    this.rulings = rulings;
    this.ties = ties;
    this.doubts = doubts;
    this.persons = persons;
  }

  /** The sheet of a tray, found by its label however it was typed or scanned. */
  @Transactional(readOnly = true)
  public Optional<TraySheet> of(String label) {
    return units
        .labelled(label)
        .filter(unit -> unit.kind() == UnitKind.TRAY)
        .flatMap(unit -> bench.tray(Objects.requireNonNull(unit.id())))
        .map(this::sheet);
  }

  private TraySheet sheet(TrayLine line) {
    UUID id = line.trayId();
    Tray tray = trays.findById(id).orElseThrow();
    List<FinalCount> standing = counts.standing(id);
    List<TrayLook> seen = looks.findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(id);
    List<Weaning> weaned = weanings.findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(id);
    List<TakenOut> out = takenOuts.findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(id);
    List<FinalCount> counted = counts.findByTrayIdOrderByRecordedRecordedAt(id);
    return new TraySheet(
        line,
        batches.findById(tray.batchId()).orElseThrow(),
        tray,
        seen,
        out,
        takenOuts.soFar(id),
        counted,
        standing,
        weaned,
        rulings.findByTrayIdOrderByOnDate(id),
        ties.findByUnitIdOrderById(id),
        doubts.findByUnitIdOrderByOnDate(id),
        initials(Stream.of(seen, out, counted, weaned).flatMap(List::stream)));
  }

  private Map<UUID, String> initials(Stream<? extends Fact> facts) {
    Set<UUID> named =
        facts
            .flatMap(fact -> Stream.ofNullable(fact.recorded().personId()))
            .collect(Collectors.toSet());
    return persons.findAllById(named).stream()
        .collect(Collectors.toMap(it -> Objects.requireNonNull(it.id()), Person::initials));
  }
}
