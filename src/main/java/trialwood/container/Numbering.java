package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** Gives plants of a lot numbers of their own, and says where each one stands. */
@Service
public class Numbering {

  private final Plants plants;
  private final PlantPlaces places;
  private final LotRecords records;
  private final Units units;
  private final Identity identity;
  private final Holders holders;
  private final Recorder recorder;

  Numbering(
      Plants plants,
      PlantPlaces places,
      LotRecords records,
      Units units,
      Identity identity,
      Holders holders,
      Recorder recorder) {
    this.plants = plants;
    this.places = places;
    this.records = records;
    this.units = units;
    this.identity = identity;
    this.holders = holders;
    this.recorder = recorder;
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
    UUID unit =
        Objects.requireNonNull(units.save(new Unit(UnitKind.PLANT, plant.label(), null)).id());
    plants.save(new Plant(unit, plant.number(), recorded));
    places.save(new PlantPlace(unit, lot, from, recorded));
    return unit;
  }

  /** Says that a numbered plant stands in that lot from a day on. */
  @Transactional
  public void move(UUID plantId, UUID lotId, LocalDate on, @Nullable UUID personId) {
    places.save(new PlantPlace(plantId, records.known(lotId), on, recorder.by(personId)));
  }
}
