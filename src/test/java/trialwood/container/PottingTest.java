package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trialwood.container.Nursery.AUTUMN;
import static trialwood.container.Nursery.POTTED;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.container.NewLot.Taken;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

@ContainerTest
class PottingTest {

  private static final LocalDate SPRING = LocalDate.of(2023, 3, 28);

  @Autowired Nursery nursery;
  @Autowired Potting potting;
  @Autowired Shifting shifting;
  @Autowired LotRecords records;
  @Autowired Lots lots;
  @Autowired LotSources sources;
  @Autowired PlantPlaces places;
  @Autowired Plants plants;
  @Autowired Holders holders;
  @Autowired Units units;
  @Autowired Identity identity;
  @Autowired Doubts doubts;

  private UUID tray(String label, String accession) {
    UUID tray = Objects.requireNonNull(units.save(new Unit(UnitKind.TRAY, label, null)).id());
    LocalDate stuck = LocalDate.of(2022, 6, 7);
    identity.say(
        new Tie(
            tray,
            nursery.accession(accession),
            stuck,
            null,
            "stuck",
            null,
            stuck,
            new Recorded(null, "bench", Instant.EPOCH)));
    return tray;
  }

  private NewShift shift(String label, int number, List<UUID> numbered) {
    Pots pots = new Pots(nursery.largePots(), new BigDecimal("9.5"), SPRING, number, "bed 2", null);
    return new NewShift(label, pots, numbered, null);
  }

  @Test
  void a_lot_belongs_to_its_accession_from_the_day_it_was_potted() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);

    assertThat(holders.of(lot, POTTED)).contains(nursery.accession("C18-03"));
    assertThat(holders.of(lot, POTTED.minusDays(1))).isEmpty();
  }

  @Test
  void plants_bought_in_need_no_tray() {
    UUID lot = nursery.lot("22-CK-1-G1", "CK-1", 10);

    assertThat(sources.findByLotId(lot)).isEmpty();
  }

  @Test
  void more_plants_out_of_the_trays_than_pots_is_refused() {
    NewLot lot =
        new NewLot(
            "22-C18-03-G1",
            nursery.accession("C18-03"),
            nursery.pots(20),
            List.of(new Taken(tray("T1", "C18-03"), 11), new Taken(tray("T2", "C18-03"), 10)),
            null);

    assertThatThrownBy(() -> potting.pot(lot)).hasMessage("21 taken, 20 potted.");
  }

  @Test
  void a_tray_of_another_accession_is_kept_and_asked_about() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);

    potting.take(lot, new Taken(tray("T9", "C18-04"), 7));

    assertThat(doubts.findByUnitIdOrderByOnDate(lot))
        .extracting(Doubt::question)
        .containsExactly("T9 was another accession's on the day its plants were potted.");
  }

  @Test
  void a_label_in_use_is_refused_however_it_is_typed() {
    nursery.lot("22-C18-03-G1", "C18-03", 20);

    assertThatThrownBy(() -> nursery.lot("22-c18-3-g1", "C18-03", 20))
        .hasMessageContaining("is taken");
  }

  @Test
  void nothing_is_potted_tomorrow() {
    Pots pots = new Pots(nursery.smallPots(), null, LocalDate.now().plusDays(2), 5, null, null);
    NewLot lot = new NewLot("L1", nursery.accession("C18-03"), pots, List.of(), null);

    assertThatThrownBy(() -> potting.pot(lot)).hasMessageContaining("tomorrow");
  }

  @Test
  void what_was_potted_is_alive_lost_disposed_of_given_away_or_shifted() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), 1, "wilted, roots brown", null));
    records.letGo(
        lot, new NewOutgoing(AUTUMN, 2, Way.TRANSFERRED, "Saltgrass Flat", "M-7", null, null));
    records.letGo(lot, new NewOutgoing(AUTUMN, 3, Way.DISPOSED, null, null, null, null));
    shifting.shift(lot, shift("23-C18-03-G3", 12, List.of()), null);

    Ledger ledger = lots.ledger(lot, SPRING);

    assertThat(ledger).isEqualTo(new Ledger(20, 1, 3, 2, 12));
    assertThat(ledger.alive()).isEqualTo(2);
    assertThat(lots.ledger(lot, AUTUMN).alive()).isEqualTo(14);
  }

  @Test
  void shifted_plants_keep_their_numbers_and_their_accession() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    List<UUID> numbered = nursery.numbered(lot, "22-C18-03-G1", 20);

    UUID larger = shifting.shift(lot, shift("23-C18-03-G3", 12, numbered.subList(0, 12)), null);

    assertThat(places.standing(larger, SPRING))
        .containsExactlyInAnyOrderElementsOf(numbered.subList(0, 12));
    assertThat(places.standing(lot, SPRING)).hasSize(8);
    assertThat(places.standing(lot, SPRING.minusDays(1))).hasSize(20);
    assertThat(plants.findById(numbered.get(3)).orElseThrow().number()).isEqualTo(4);
    assertThat(holders.of(larger, SPRING)).contains(nursery.accession("C18-03"));
    assertThat(sources.findByLotId(larger)).extracting(LotSource::sourceId).containsExactly(lot);
  }

  @Test
  void numbered_plants_that_must_be_among_the_shifted_are_asked_for() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    List<UUID> numbered = nursery.numbered(lot, "22-C18-03-G1", 10);

    assertThat(shifting.questions(lot, shift("23-C18-03-G3", 12, List.of())))
        .containsExactly(
            new Problem(
                "plants",
                "8 plants stay, but 10 that have a number. Which numbered plants are shifted?"));
    assertThat(shifting.questions(lot, shift("23-C18-03-G3", 12, numbered.subList(0, 2))))
        .isEmpty();
    assertThat(shifting.questions(lot, shift("23-C18-03-G3", 10, List.of()))).isEmpty();
  }

  @Test
  void more_to_shift_than_there_are_is_refused_with_both_numbers() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 9);

    assertThatThrownBy(() -> shifting.shift(lot, shift("23-C18-03-G3", 12, List.of()), null))
        .hasMessage("12 to shift, 9 in the lot.");
  }

  @Test
  void a_shift_goes_into_larger_pots() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    UUID larger = shifting.shift(lot, shift("23-C18-03-G3", 12, List.of()), null);
    Pots small = new Pots(nursery.smallPots(), new BigDecimal("2.8"), SPRING, 5, null, null);

    assertThatThrownBy(
            () -> shifting.shift(larger, new NewShift("X1", small, List.of(), null), null))
        .hasMessage("A shift goes into larger pots; these go from #3 (9.5 l) to #1 (2.8 l).");
  }

  @Test
  void a_numbered_plant_that_stands_elsewhere_is_not_shifted() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    UUID other = nursery.lot("22-C18-04-G1", "C18-04", 20);
    List<UUID> strangers = nursery.numbered(other, "22-C18-04-G1", 2);

    assertThatThrownBy(() -> shifting.shift(lot, shift("23-C18-03-G3", 12, strangers), null))
        .hasMessage("One of these plants does not stand in the lot.");
  }

  @Test
  void more_plants_numbered_than_potted_is_refused() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 4);

    assertThatThrownBy(() -> nursery.numbered(lot, "22-C18-03-G1", 5))
        .hasMessage("5 numbered, 4 potted.");
  }

  /** Shifted in March or April after the first winter: common practice, no source. */
  @Test
  void a_shift_after_the_first_winter_is_usual_and_a_second_in_its_season_is_asked_about() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    NewShift spring = shift("23-C18-03-G3", 12, List.of());
    assertThat(shifting.questions(lot, spring)).isEmpty();
    UUID larger = shifting.shift(lot, spring, null);
    Pots five =
        new Pots(
            nursery.containerClass("#5", "20.353"),
            new BigDecimal("14.9"),
            spring.pots().on().plusMonths(3),
            4,
            null,
            null);

    assertThat(shifting.questions(larger, new NewShift("23-C18-03-G5", five, List.of(), null)))
        .hasSize(1);
  }

  /** 500 pots of class #1 that hold 2.8 L take 1.4 m3 of medium: trade arithmetic. */
  @Test
  void the_medium_of_a_lot_is_its_pots_times_their_true_volume() {
    assertThat(nursery.pots(500).mediumLitres())
        .hasValueSatisfying(litres -> assertThat(litres).isEqualByComparingTo("1400"));
    assertThat(new Pots(nursery.smallPots(), null, Nursery.POTTED, 500, null, null).mediumLitres())
        .isEmpty();
  }

  /**
   * Bands of the classes as remembered of ANSI Z60.1, in shared reference values: #1 2.491 to 4.113
   * L, #3 10.291 to 12.159 L. A #3 of one grower held 9.0 L: a true volume outside its class is
   * recorded and never refused.
   */
  @Test
  void a_true_volume_outside_its_class_is_recorded() {
    Pots small =
        new Pots(nursery.largePots(), new BigDecimal("9.0"), Nursery.POTTED, 5, null, null);
    UUID lot = potting.pot(new NewLot("L9", nursery.accession("C18-03"), small, List.of(), null));

    assertThat(Objects.requireNonNull(lots.findById(lot).orElseThrow().litres()))
        .isEqualByComparingTo("9.0");
  }
}
