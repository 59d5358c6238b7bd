package trialwood.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.record.Refused;
import trialwood.stock.StockBook.Standing;
import trialwood.testing.RecordTest;
import trialwood.unit.Identity;

/** The rules are common practice, no source. */
@RecordTest
@Import({StockRecords.class, StockBook.class, Identity.class})
class StockRecordsTest {

  private static final LocalDate KEPT = LocalDate.of(2023, 4, 12);
  private static final LocalDate TESTED = LocalDate.of(2024, 6, 12);
  private static final LocalDate TODAY = LocalDate.of(2024, 7, 1);

  @Autowired Crops crops;
  @Autowired Accessions accessions;
  @Autowired StockRecords records;
  @Autowired StockEvents events;
  @Autowired StockBook book;

  private UUID clone;

  @BeforeEach
  void a_clone() {
    Crop crop =
        crops.saveAndFlush(
            new Crop(
                "ALTHEA",
                "Hibiscus syriacus",
                "althea",
                true,
                18,
                28,
                LookDays.of("7 14"),
                85,
                null));
    clone =
        Objects.requireNonNull(
            accessions
                .saveAndFlush(
                    new Accession(
                        Objects.requireNonNull(crop.id()),
                        "C18-03",
                        AccessionKind.CANDIDATE,
                        Parentage.unknown(),
                        null))
                .id());
  }

  private UUID keep(String label, int number, LocalDate since, String place) {
    return records.keep(
        new NewStockPlant(label, clone, number, since, place, null, null, null, null));
  }

  private UUID keep(int number, String place) {
    return keep("C18-03-S" + number, number, KEPT, place);
  }

  private static NewStockEvent tested(LocalDate on, StockEvent.Result result) {
    return new NewStockEvent(on, StockEvent.Kind.TESTED, null, "virus panel", result, null, null);
  }

  private static NewStockEvent died(LocalDate on, @Nullable String ofWhat) {
    return new NewStockEvent(on, StockEvent.Kind.DIED, null, null, null, ofWhat, null);
  }

  private List<String> warnings() {
    return StockBook.warnings(book.of(clone, TODAY));
  }

  private Standing plant(int number) {
    return book.labelled("c18-03-s" + number, TODAY).orElseThrow();
  }

  @Test
  void a_second_living_plant_with_the_same_number_is_refused_until_the_first_is_dead() {
    UUID first = keep(2, "hedge");

    assertThatThrownBy(() -> keep("C18-03-S2b", 2, TESTED, "tunnel"))
        .isInstanceOf(Refused.class)
        .hasMessage("C18-03-S2 bears number 2 and lives, by the record.");
    records.happened(first, died(TESTED, "root rot"));
    keep("C18-03-S2b", 2, TESTED.plusDays(1), "tunnel");

    assertThat(book.of(clone, TODAY)).hasSize(2);
  }

  @Test
  void a_label_that_is_taken_is_refused() {
    keep(1, "hedge");

    assertThatThrownBy(() -> keep("C18-03-S1", 2, KEPT, "hedge")).hasMessageContaining("taken");
  }

  @Test
  void a_plant_stands_where_it_was_moved_last() {
    UUID plant = keep(1, "hedge");
    records.happened(
        plant,
        new NewStockEvent(
            TESTED, StockEvent.Kind.MOVED, "tunnel", null, null, "away from the frost", null));

    assertThat(plant(1).place()).isEqualTo("tunnel");
    assertThat(book.happened(plant))
        .extracting(StockBook.Happened::words)
        .containsExactly("moved to tunnel; away from the frost");
  }

  @Test
  void one_place_that_holds_all_and_a_last_plant_are_warned_of() {
    assertThat(warnings()).isEmpty();
    UUID first = keep(1, "Hedge");
    assertThat(warnings())
        .containsExactly("Only one stock plant is left that may be cut: keep at least two.");
    UUID second = keep(2, "hedge");
    assertThat(warnings()).containsExactly("One place holds all 2 stock plants: Hedge.");
    keep(3, "tunnel");
    assertThat(warnings()).isEmpty();

    records.happened(first, died(TESTED, "frost"));
    records.happened(second, tested(TESTED, StockEvent.Result.POSITIVE));
    assertThat(warnings()).hasSize(1);
    assertThat(plant(2).isClean()).isFalse();
  }

  @Test
  void a_plant_that_tested_positive_stays_so_until_the_test_itself_is_put_right() {
    UUID plant = keep(2, "hedge");
    records.happened(plant, tested(TESTED, StockEvent.Result.POSITIVE));
    records.happened(plant, tested(TESTED.plusDays(10), StockEvent.Result.NEGATIVE));
    assertThat(plant(2).positiveOn()).isEqualTo(TESTED);
    UUID test = Objects.requireNonNull(events.standing(plant).get(0).id());

    assertThatThrownBy(() -> records.correct(test, tested(TESTED, StockEvent.Result.NEGATIVE), " "))
        .hasMessageContaining("Say why");
    records.correct(test, tested(TESTED, StockEvent.Result.NEGATIVE), "read off the wrong line");

    assertThat(plant(2).positiveOn()).isNull();
    assertThat(book.happened(plant)).filteredOn(StockBook.Happened::replaced).hasSize(1);
    assertThatThrownBy(
            () -> records.correct(test, tested(TESTED, StockEvent.Result.NEGATIVE), "again"))
        .hasMessageContaining("replaced before");
  }

  @Test
  void nothing_happens_to_a_dead_plant_and_none_dies_twice() {
    UUID plant = keep(2, "hedge");
    records.happened(plant, died(TESTED, "destroyed"));

    assertThatThrownBy(() -> records.happened(plant, died(TESTED, "destroyed")))
        .hasMessageContaining("recorded dead");
    assertThatThrownBy(
            () -> records.happened(plant, tested(TESTED.plusDays(1), StockEvent.Result.NEGATIVE)))
        .hasMessageContaining("recorded dead");
    records.happened(plant, tested(TESTED.minusDays(1), StockEvent.Result.NEGATIVE));

    assertThat(book.happened(plant)).hasSize(2);
  }

  @Test
  void what_is_missing_or_lies_before_the_plant_is_refused() {
    UUID plant = keep(1, "hedge");

    assertThatThrownBy(() -> records.happened(plant, died(TESTED, null)))
        .hasMessageContaining("what it died of");
    assertThatThrownBy(
            () -> records.happened(plant, tested(KEPT.minusDays(1), StockEvent.Result.NEGATIVE)))
        .hasMessageContaining("later day");
    assertThatThrownBy(() -> keep("C18-03-S9", 0, KEPT, "hedge"))
        .hasMessageContaining("numbered from 1");
    assertThatThrownBy(() -> keep("C18-03-S8", 8, KEPT, " "))
        .hasMessageContaining("where it stands");
  }
}
