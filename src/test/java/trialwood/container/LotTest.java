package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.springframework.test.util.ReflectionTestUtils;
import trialwood.crop.ContainerClass;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.record.Refused;

class LotTest {

  private static final LocalDate POTTED = LocalDate.of(2022, 7, 20);
  private static final LocalDate AUTUMN = LocalDate.of(2022, 10, 12);
  private static final Recorded SIGNED = new Recorded(null, "bench", Instant.EPOCH);

  private final Lot lot = lot(20, "2.8");

  private static Lot lot(int potted, String litres) {
    ContainerClass pots = new ContainerClass("#1", null, null, null);
    ReflectionTestUtils.setField(pots, "id", UUID.randomUUID());
    return new Lot(
        UUID.randomUUID(),
        pots,
        new Pots(pots.id(), new BigDecimal(litres), POTTED, potted, "bed 1", null),
        null,
        SIGNED);
  }

  private LotCount count(int alive, Integer saleable, LocalDate on) {
    return new LotCount(lot, new NewCount(on, alive, saleable, null, null), SIGNED);
  }

  private LotLoss loss(int number, String reason) {
    return new LotLoss(lot, new NewLoss(AUTUMN, number, reason, null), SIGNED);
  }

  @Test
  void a_lot_of_no_plants_is_refused() {
    assertThatThrownBy(() -> lot(0, "2.8")).hasMessageContaining("this says 0");
  }

  @Test
  void a_pot_without_volume_is_refused() {
    assertThatThrownBy(() -> lot(20, "0")).hasMessageContaining("litres");
  }

  @Test
  void a_volume_outside_its_class_is_taken() {
    assertThat(lot(20, "9.5").litres()).isEqualByComparingTo("9.5");
  }

  @Test
  void more_saleable_than_alive_is_refused_with_both_numbers() {
    assertThatThrownBy(() -> count(17, 18, AUTUMN)).hasMessage("18 saleable, 17 alive.");
  }

  @Test
  void more_alive_than_potted_is_refused_with_both_numbers() {
    assertThatThrownBy(() -> count(21, null, AUTUMN)).hasMessage("21 alive, 20 potted.");
  }

  @Test
  void a_count_before_potting_is_refused_at_its_date() {
    assertThatThrownBy(() -> count(20, 20, POTTED.minusDays(1)))
        .asInstanceOf(InstanceOfAssertFactories.type(Refused.class))
        .satisfies(
            refused ->
                assertThat(refused.problems()).extracting(Problem::field).containsOnly("on"));
  }

  @Test
  void a_count_without_grades_is_not_a_count_of_none_saleable() {
    assertThat(count(20, null, AUTUMN).saleable()).isNull();
  }

  @Test
  void a_loss_of_nothing_or_less_is_refused() {
    assertThatThrownBy(() -> loss(0, "frost")).hasMessageContaining("this says 0");
    assertThatThrownBy(() -> loss(-2, "frost")).hasMessageContaining("this says -2");
  }

  @Test
  void a_loss_without_a_reason_is_refused() {
    assertThatThrownBy(() -> loss(1, " ")).hasMessageContaining("what they died of");
  }

  @Test
  void plants_given_away_say_to_whom_or_what_for() {
    NewOutgoing given = new NewOutgoing(AUTUMN, 3, Way.TRANSFERRED, null, null, null, null);

    assertThatThrownBy(() -> new LotOutgoing(lot, given, SIGNED))
        .hasMessageContaining("who has the plants now");
  }

  @Test
  void the_ledger_leaves_alive_what_no_record_tells_of() {
    Ledger ledger = new Ledger(20, 1, 2, 3, 12);

    assertThat(ledger.alive()).isEqualTo(2);
    assertThat(ledger.missing(2)).isZero();
    assertThat(ledger.missing(1)).isEqualTo(1);
  }
}
