package trialwood.container;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.NewLot.Taken;
import trialwood.crop.ContainerClass;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Identity;
import trialwood.unit.PlantsTaken;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

/** Fills pots: makes lots out of trays, and larger lots out of smaller ones. */
@Service
public class Potting {

  private static final String LABEL = "[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,59}";

  private final Lots lots;
  private final LotSources sources;
  private final PlantPlaces places;
  private final LotRecords records;
  private final Numbering numbering;
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
      PlantPlaces places,
      LotRecords records,
      Numbering numbering,
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
    this.places = places;
    this.records = records;
    this.numbering = numbering;
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
    return pot(lot, "potted");
  }

  private UUID pot(NewLot lot, String reason) {
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
    lots.save(new Lot(unit, containerClass, pots, recorded));
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
            sources.findBySourceId(taken.sourceId()).stream().mapToLong(LotSource::number).sum(),
            lot.recorded()));
  }

  /**
   * Moves plants of a lot into larger pots: a new lot of the same accession, of which the plants
   * are as old as before; numbered plants keep their numbers.
   *
   * @return the new lot's unit
   * @throws Refused when there are not so many, the pots are not larger, or a numbered plant does
   *     not stand in the lot
   */
  @Transactional
  public UUID shift(UUID fromLotId, NewShift shift) {
    Pots pots = shift.pots();
    records.letGo(
        fromLotId,
        new NewOutgoing(
            pots.on(),
            pots.number(),
            Way.SHIFTED,
            null,
            null,
            "to " + shift.label().strip(),
            shift.personId()));
    Set<UUID> standing = places.standing(fromLotId, pots.on());
    Check.that()
        .holds(
            standing.containsAll(shift.plantIds()),
            "plants",
            "One of these plants does not stand in the lot.")
        .holds(
            shift.plantIds().size() <= pots.number(),
            "plants",
            "%d numbered plants named, %d to shift."
                .formatted(shift.plantIds().size(), pots.number()))
        .orRefuse();
    UUID accession =
        holders
            .of(fromLotId, pots.on())
            .orElseThrow(() -> new Refused("on", "Nobody knows whose plants they were that day."));
    Taken taken = new Taken(fromLotId, pots.number());
    NewLot larger = new NewLot(shift.label(), accession, pots, List.of(taken), shift.personId());
    UUID lot = pot(larger, "shifted");
    shift.plantIds().forEach(plant -> numbering.move(plant, lot, pots.on(), shift.personId()));
    return lot;
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
