package trialwood.container;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.NewLot.Taken;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Refused;

/** Moves plants into larger pots: a new lot out of one in smaller pots. */
@Service
public class Shifting {

  private final Potting potting;
  private final Lots lots;
  private final LotSources sources;
  private final PlantPlaces places;
  private final LotRecords records;
  private final Numbering numbering;
  private final Holders holders;

  Shifting(
      Potting potting,
      Lots lots,
      LotSources sources,
      PlantPlaces places,
      LotRecords records,
      Numbering numbering,
      Holders holders) {
    this.potting = potting;
    this.lots = lots;
    this.sources = sources;
    this.places = places;
    this.records = records;
    this.numbering = numbering;
    this.holders = holders;
  }

  /**
   * What is unusual about it: its plants came out of smaller pots in the same season, or numbered
   * ones must be among them and are not named.
   */
  @Transactional(readOnly = true)
  public List<Problem> questions(UUID fromLotId, NewShift shift) {
    Lot from = records.known(fromLotId);
    LocalDate on = shift.pots().on();
    List<Problem> questions = new ArrayList<>();
    boolean again =
        from.pottedOn().getYear() == on.getYear()
            && sources.findByLotId(fromLotId).stream()
                .anyMatch(source -> lots.existsById(source.sourceId()));
    if (again) {
      questions.add(new Problem("on", "These plants were shifted this season. Once more?"));
    }
    int numbered = places.standing(fromLotId, on).size() - shift.plantIds().size();
    long left = lots.ledger(fromLotId, on).alive() - shift.pots().number();
    if (left >= 0 && numbered > left) {
      questions.add(
          new Problem(
              "plants",
              "%d plants stay, but %d that have a number. Which numbered plants are shifted?"
                  .formatted(left, numbered)));
    }
    return questions;
  }

  /**
   * Shifts plants to a new lot of the same accession, of which the plants are as old as before;
   * numbered plants keep their numbers.
   *
   * @param checked what was asked about it and answered, if anything
   * @return the new lot's unit
   * @throws Refused when there are not so many, the pots are not larger, or a numbered plant does
   *     not stand in the lot
   */
  @Transactional
  public UUID shift(UUID fromLotId, NewShift shift, @Nullable Checked checked) {
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
    UUID lot = potting.pot(larger, "shifted", checked);
    shift.plantIds().forEach(plant -> numbering.move(plant, lot, pots.on(), shift.personId()));
    return lot;
  }
}
