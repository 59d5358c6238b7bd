package trialwood.container;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.NewLot.Taken;
import trialwood.crop.ContainerClass;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.CodeKey;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Identity;
import trialwood.unit.PlantsTaken;
import trialwood.unit.PlantsWanted;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

/** Fills pots: makes lots out of trays or of plants bought in. */
@Service
public class Potting {

  private static final String LABEL = "[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,59}";

  private final Lots lots;
  private final LotSources sources;
  private final LotRecords records;
  private final PotSizes sizes;
  private final Units units;
  private final Identity identity;
  private final Holders holders;
  private final Doubts doubts;
  private final ApplicationEventPublisher events;
  private final Recorder recorder;
  private final Clock clock;

  Potting(
      Lots lots,
      LotSources sources,
      LotRecords records,
      PotSizes sizes,
      Units units,
      Identity identity,
      Holders holders,
      Doubts doubts,
      ApplicationEventPublisher events,
      Recorder recorder,
      Clock clock) {
    this.lots = lots;
    this.sources = sources;
    this.records = records;
    this.sizes = sizes;
    this.units = units;
    this.identity = identity;
    this.holders = holders;
    this.doubts = doubts;
    this.events = events;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * Pots a lot, out of trays or bought in, and ties it to its accession from that day.
   *
   * @return the lot's unit
   * @throws Refused when the label is taken, more plants were taken than potted, or the day lies
   *     ahead
   */
  @Transactional
  public UUID pot(NewLot lot) {
    return pot(lot, null);
  }

  /**
   * The same, after something unusual was asked about.
   *
   * @param checked questions and answer, kept with the lot
   */
  @Transactional
  public UUID pot(NewLot lot, @Nullable Checked checked) {
    return pot(lot, "potted", checked);
  }

  /**
   * What is unusual about potting it: more plants than are alive in a tray, or plants that nobody
   * looked at off the mist.
   */
  @Transactional(readOnly = true)
  public List<Problem> questions(NewLot lot) {
    List<String> unusual = new ArrayList<>();
    for (Taken taken : lot.sources()) {
      long inAll = taken(taken.sourceId()) + taken.number();
      events.publishEvent(new PlantsWanted(taken.sourceId(), lot.pots().on(), inAll, unusual));
    }
    return unusual.stream().map(sentence -> new Problem("sources", sentence)).toList();
  }

  UUID pot(NewLot lot, String reason, @Nullable Checked checked) {
    Pots pots = lot.pots();
    ContainerClass containerClass = sizes.of(pots.classId());
    Check.that()
        .holds(
            lot.label().strip().matches(LABEL),
            "lot",
            "A lot's label has up to 60 letters, figures, dashes and points.")
        .holds(
            !units.existsByLabelKey(CodeKey.of(lot.label())),
            "lot",
            "The label %s is taken.".formatted(lot.label().strip()))
        .holds(
            !pots.on().isAfter(LocalDate.now(clock)),
            "on",
            "Nothing can be potted from tomorrow on.")
        .orRefuse();
    Recorded recorded = recorder.by(lot.personId());
    UUID unit = Objects.requireNonNull(units.save(new Unit(UnitKind.LOT, lot.label(), null)).id());
    lots.save(new Lot(unit, containerClass, pots, checked, recorded));
    identity.say(
        new Tie(unit, lot.accessionId(), pots.on(), null, reason, null, pots.on(), recorded));
    lot.sources().forEach(taken -> take(unit, taken));
    return unit;
  }

  /**
   * Says that so many plants of a lot came out of a tray, or out of a lot in smaller pots.
   *
   * @throws Refused when more were taken than potted, when the source is named twice, or when its
   *     pots were not smaller
   */
  @Transactional
  public void take(UUID lotId, Taken taken) {
    Lot lot = records.locked(lotId);
    Unit source =
        units
            .findById(taken.sourceId())
            .orElseThrow(() -> new Refused("source", "This tray or lot is not on record."));
    int before = sources.findByLotId(lotId).stream().mapToInt(LotSource::number).sum();
    Check.that()
        .holds(
            before + taken.number() <= lot.potted(),
            "number",
            "%d taken, %d potted.".formatted(before + taken.number(), lot.potted()))
        .holds(
            !sources.existsByLotIdAndSourceId(lotId, taken.sourceId()),
            "source",
            "%s is named already.".formatted(source.label()))
        .orRefuse();
    lots.findById(taken.sourceId()).ifPresent(smaller -> sizes.refuseUnlessLarger(smaller, lot));
    sources.save(new LotSource(lotId, taken.sourceId(), taken.number()));
    doubtStrangers(lot, source);
    events.publishEvent(
        new PlantsTaken(
            taken.sourceId(),
            lot.pottedOn(),
            taken(taken.sourceId()),
            lot.checked(),
            lot.recorded()));
  }

  /** Plants potted out of a tray or lot so far. */
  private long taken(UUID source) {
    return sources.findBySourceId(source).stream().mapToLong(LotSource::number).sum();
  }

  private void doubtStrangers(Lot lot, Unit source) {
    List<UUID> both =
        Stream.of(lot.unitId(), Objects.requireNonNull(source.id()))
            .flatMap(unit -> holders.of(unit, lot.pottedOn()).stream())
            .distinct()
            .toList();
    if (both.size() > 1) {
      doubts.save(
          Doubt.between(
              lot.unitId(),
              Objects.requireNonNull(source.id()),
              lot.pottedOn(),
              "%s was another accession's on the day its plants were potted."
                  .formatted(source.label()),
              lot.recorded()));
    }
  }
}
