package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.crop.Crops;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Refused;

/** The ranges are common practice, no source, where no other is named. */
@ContainerTest
class TendingTest {

  private static final LocalDate PINCHED = Nursery.POTTED.plusDays(14);
  private static final LocalDate UNCOVERED = LocalDate.of(2023, 4, 3);

  @Autowired Nursery nursery;
  @Autowired Tending tending;
  @Autowired LotRecords records;
  @Autowired LotCares cares;
  @Autowired LotGrades grades;
  @Autowired Crops crops;

  private UUID lot;

  @BeforeEach
  void twenty_pots() {
    lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
  }

  private static NewCare pinch(LocalDate on, String cutTo) {
    return NewCare.cut(on, CareKind.PINCHED, new BigDecimal(cutTo), null);
  }

  private static NewCare uncovered(String lowest, Integer dieback) {
    return new NewCare(
        UNCOVERED, CareKind.UNCOVERED, null, null, new BigDecimal(lowest), dieback, null);
  }

  private static NewGrade graded(Integer a, Integer b, Integer c, Integer rootBall) {
    return new NewGrade(Nursery.AUTUMN, a, b, c, rootBall, null);
  }

  @Test
  void a_pinch_is_kept_with_its_date_and_height() {
    tending.care(lot, pinch(PINCHED, "15"), null);

    assertThat(cares.findByLotIdOrderByOnDate(lot))
        .singleElement()
        .satisfies(
            care -> {
              assertThat(care.onDate()).isEqualTo(PINCHED);
              assertThat(care.cutToCm()).isEqualByComparingTo("15");
            });
  }

  @Test
  void a_pinch_before_potting_is_refused() {
    assertThatThrownBy(() -> tending.care(lot, pinch(Nursery.POTTED.minusDays(1), "15"), null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("potted later");
  }

  @Test
  void a_pinch_after_the_middle_of_august_is_asked_about() {
    assertThat(tending.questions(lot, pinch(LocalDate.of(2022, 8, 15), "15"))).isEmpty();
    assertThat(tending.questions(lot, pinch(LocalDate.of(2022, 8, 16), "15")))
        .extracting(Problem::field)
        .containsExactly("on");
  }

  @Test
  void an_answer_is_kept_with_its_question() {
    tending.care(lot, pinch(LocalDate.of(2022, 8, 16), "15"), new Checked("After?", "mild autumn"));

    assertThat(cares.findByLotIdOrderByOnDate(lot).get(0).checked())
        .isEqualTo(new Checked("After?", "mild autumn"));
  }

  @Test
  void a_medium_colder_than_the_roots_of_the_crop_stand_is_asked_about() {
    crops.findById(nursery.crop()).orElseThrow().rootsDieBelow(new BigDecimal("-5"));
    crops.flush();

    assertThat(tending.questions(lot, uncovered("-5", 0))).isEmpty();
    assertThat(tending.questions(lot, uncovered("-6", 0)))
        .extracting(Problem::field)
        .containsExactly("lowestCelsius");
  }

  @Test
  void dieback_outside_0_to_100_is_refused() {
    assertThatThrownBy(() -> tending.care(lot, uncovered("-2", 101), null))
        .hasMessageContaining("0 to 100");
  }

  @Test
  void a_lot_is_covered_somewhere() {
    NewCare nowhere =
        new NewCare(LocalDate.of(2022, 11, 28), CareKind.COVERED, null, null, null, null, null);

    assertThatThrownBy(() -> tending.care(lot, nowhere, null)).hasMessageContaining("which house");
  }

  @Test
  void a_pinch_written_with_the_wrong_day_is_replaced_once_and_stays_readable() {
    tending.care(lot, pinch(PINCHED, "15"), null);
    UUID earlier = Objects.requireNonNull(cares.findByLotIdOrderByOnDate(lot).get(0).id());

    assertThatThrownBy(() -> tending.correctCare(earlier, pinch(PINCHED, "15"), " ", null))
        .hasMessageContaining("Say why");
    tending.correctCare(earlier, pinch(PINCHED.plusDays(2), "15"), "read off the wrong line", null);

    assertThat(cares.findByLotIdOrderByOnDate(lot))
        .extracting(LotCare::onDate)
        .containsExactly(PINCHED, PINCHED.plusDays(2));
    assertThatThrownBy(() -> tending.correctCare(earlier, pinch(PINCHED, "15"), "again", null))
        .hasMessageContaining("replaced");
  }

  @Test
  void a_grading_put_right_is_held_against_the_plants_alive() {
    tending.grade(lot, graded(17, 2, 1, 3), null);
    UUID earlier = Objects.requireNonNull(grades.findByLotIdOrderByOnDate(lot).get(0).id());

    assertThatThrownBy(() -> tending.correctGrade(earlier, graded(18, 2, 1, 3), "miscounted", null))
        .hasMessage("21 graded, 20 alive.");
    tending.correctGrade(earlier, graded(16, 3, 1, 4), "miscounted", null);

    assertThat(grades.findByLotIdOrderByOnDate(lot))
        .filteredOn(grade -> grade.supersedesId() != null)
        .singleElement()
        .satisfies(grade -> assertThat(grade.a()).isEqualTo(16));
  }

  @Test
  void more_graded_than_alive_is_refused() {
    records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), 1, "roots brown", null));

    assertThatThrownBy(() -> tending.grade(lot, graded(17, 2, 1, null), null))
        .hasMessage("20 graded, 19 alive.");
  }

  @Test
  void grades_come_all_three_or_none() {
    assertThatThrownBy(() -> tending.grade(lot, graded(17, null, null, null), null))
        .hasMessageContaining("Fill A, B and C");
    tending.grade(lot, graded(null, null, null, 4), null);

    assertThat(grades.findByLotIdOrderByOnDate(lot))
        .singleElement()
        .satisfies(grade -> assertThat(Objects.requireNonNull(grade.rootBall())).isEqualTo(4));
  }

  @Test
  void all_of_fewer_than_five_plants_being_a_is_asked_about() {
    assertThat(Tending.questions(graded(4, 0, 0, null))).hasSize(1);
    assertThat(Tending.questions(graded(5, 0, 0, null))).isEmpty();
    assertThat(Tending.questions(graded(3, 1, 0, null))).isEmpty();
    assertThat(Tending.questions(graded(null, null, null, 5))).isEmpty();
  }

  @Test
  void a_root_ball_scores_0_to_5() {
    assertThat(RootBall.scores().keySet()).containsExactly(0, 1, 2, 3, 4, 5);
    assertThatThrownBy(() -> tending.grade(lot, graded(null, null, null, 6), null))
        .hasMessageContaining("0 to 5");
  }
}
