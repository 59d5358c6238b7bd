package trialwood.container;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.NewLot.Taken;
import trialwood.crop.ContainerClass;
import trialwood.crop.ContainerClasses;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** Fills pots: makes lots out of trays, larger lots out of smaller ones, and numbers plants. */
@Service
public class Potting {

  private static final String LABEL = "[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,59}";

  private final Lots lots;
  private final LotSources sources;
  private final Plants plants;
  private final PlantPlaces places;
  private final LotRecords records;
  private final ContainerClasses classes;
  private final Units units;
  private final Identity identity;
  private final Holders holders;
  private final Doubts doubts;
  private final Recorder recorder;
  private final Clock clock;

  Potting(
      Lots lots,
      LotSources sources,
      Plants plants,
      PlantPlaces places,
      LotRecords records,
      ContainerClasses classes,
      Units units,
      Identity identity,
      Holders holders,
      Doubts doubts,
      Recorder recorder,
      Clock clock) {
    this.lots = lots;
    this.sources = sources;
    this.plants = plants;
    this.places = places;
    this.records = records;
    this.classes = classes;
    this.units = units;
    this.identity = identity;
    this.holders = holders;
    this.doubts = doubts;
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
    ContainerClass containerClass = containerClass(pots.classId());
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
    UUID unit = unit(UnitKind.LOT, lot.label());
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
    lots.findById(taken.sourceId()).ifPresent(smaller -> refuseUnlessLarger(smaller, lot));
    sources.save(new LotSource(lotId, taken.sourceId(), taken.number()));
    doubtStrangers(lot, source);
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
    shift.plantIds().forEach(plant -> move(plant, lot, pots.on(), shift.personId()));
    return lot;
  }

  /**
   * Gives plants of a lot numbers of their own, each tied to the accession the lot had that day.
   *
   * @throws Refused when a label is taken or more plants are numbered than were potted
   */
  @Transactional
  public List<UUID> number(
      UUID lotId, List<NewPlant> numbered, LocalDate from, @Nullable UUID personId) {
    Lot lot = records.locked(lotId);
    UUID accession =
        holders
            .of(lotId, from)
            .orElseThrow(
                () ->
                    new Refused(
                        "from",
                        "The lot was potted on %s.".formatted(Measures.day(lot.pottedOn()))));
    int before = places.standing(lotId, from).size();
    Check.that()
        .holds(
            before + numbered.size() <= lot.potted(),
            "number",
            "%d numbered, %d potted.".formatted(before + numbered.size(), lot.potted()))
        .orRefuse();
    Recorded recorded = recorder.by(personId);
    List<UUID> made = numbered.stream().map(plant -> number(lot, plant, from, recorded)).toList();
    identity.say(
        made.stream()
            .map(plant -> new Tie(plant, accession, from, null, "numbered", null, from, recorded))
            .toList());
    return made;
  }

  private UUID number(Lot lot, NewPlant plant, LocalDate from, Recorded recorded) {
    if (units.existsByLabelKey(CodeKey.of(plant.label()))) {
      throw new Refused("plant", "The label %s is taken.".formatted(plant.label().strip()));
    }
    UUID unit = unit(UnitKind.PLANT, plant.label());
    plants.save(new Plant(unit, plant.number(), recorded));
    places.save(new PlantPlace(unit, lot, from, recorded));
    return unit;
  }

  /** Says that a numbered plant stands in that lot from a day on. */
  @Transactional
  public void move(UUID plantId, UUID lotId, LocalDate on, @Nullable UUID personId) {
    places.save(new PlantPlace(plantId, records.known(lotId), on, recorder.by(personId)));
  }

  private void refuseUnlessLarger(Lot smaller, Lot larger) {
    ContainerClass from = containerClass(smaller.containerClassId());
    ContainerClass to = containerClass(larger.containerClassId());
    boolean grows =
        !from.equals(to)
            && bigger(smaller.litres(), larger.litres())
                .or(() -> bigger(from.highestLitres(), to.highestLitres()))
                .orElse(true);
    if (!grows) {
      throw new Refused(
          "class",
          "A shift goes into larger pots; these go from %s to %s."
              .formatted(pot(from, smaller.litres()), pot(to, larger.litres())));
    }
  }

  private static Optional<Boolean> bigger(@Nullable BigDecimal from, @Nullable BigDecimal to) {
    return from == null || to == null ? Optional.empty() : Optional.of(to.compareTo(from) > 0);
  }

  private static String pot(ContainerClass containerClass, @Nullable BigDecimal litres) {
    return litres == null
        ? containerClass.code()
        : "%s (%s l)".formatted(containerClass.code(), litres.stripTrailingZeros().toPlainString());
  }

  private void doubtStrangers(Lot lot, Unit source) {
    List<UUID> both =
        Stream.of(lot.unitId(), Objects.requireNonNull(source.id()))
            .flatMap(unit -> holders.of(unit, lot.pottedOn()).stream())
            .distinct()
            .toList();
    if (both.size() > 1) {
      doubts.save(
          new Doubt(
              lot.unitId(),
              lot.pottedOn(),
              "%s was another accession's on the day its plants were potted."
                  .formatted(source.label()),
              lot.recorded()));
    }
  }

  private ContainerClass containerClass(UUID id) {
    return classes
        .findById(id)
        .orElseThrow(() -> new Refused("class", "Choose a container class."));
  }

  private UUID unit(UnitKind kind, String label) {
    return Objects.requireNonNull(units.save(new Unit(kind, label, null)).id());
  }
}
