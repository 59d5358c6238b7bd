package trialwood.propagation;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
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
      Doubts doubts) {
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
  }

  /** The sheet of a tray, found by its label however it was typed or scanned. */
  @Transactional(readOnly = true)
  public Optional<TraySheet> of(String label) {
    return units
        .labelled(label)
        .filter(unit -> unit.kind() == UnitKind.TRAY)
        .flatMap(unit -> bench.tray(java.util.Objects.requireNonNull(unit.id())))
        .map(this::sheet);
  }

  private TraySheet sheet(TrayLine line) {
    UUID id = line.trayId();
    Tray tray = trays.findById(id).orElseThrow();
    List<FinalCount> standing = counts.standing(id);
    return new TraySheet(
        line,
        batches.findById(tray.batchId()).orElseThrow(),
        tray,
        looks.standing(id),
        takenOuts.standing(id),
        takenOuts.soFar(id),
        counts.findByTrayIdOrderByRecordedRecordedAt(id),
        standing,
        weanings.standing(id),
        rulings.findByTrayIdOrderByOnDate(id),
        ties.findByUnitIdOrderById(id),
        doubts.findByUnitIdOrderByOnDate(id));
  }
}
