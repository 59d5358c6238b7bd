package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.analysis.rate.TrayHistory;
import trialwood.analysis.rate.TrayPrior;
import trialwood.testing.RecordTest;

@RecordTest
@Import(PropagationSlice.class)
class TrayLikenessTest {

  private static final LocalDate LATER = LocalDate.of(2022, 7, 20);

  @Autowired private Bench bench;
  @Autowired private TrayLikeness likeness;
  @Autowired private TrayLikenessChoices choices;

  private StickingRun run;

  @BeforeEach
  void stick() {
    run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
  }

  @Test
  void a_nursery_with_few_trays_keeps_the_usual_likeness_whatever_was_chosen() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    likeness.choose(Bench.STUCK, LikenessPrior.OWN, "our mist is even", null);
    bench.flush();

    assertThat(likeness.history(LATER).trays()).isEqualTo(3);
    assertThat(likeness.prior(LATER)).isEqualTo(TrayPrior.USUAL);
    assertThat(likeness.sentence(LATER)).contains("3 trays", "from 30 on");
  }

  @Test
  void thirty_uneven_trays_teach_a_greater_likeness_which_is_used_from_the_day_it_was_chosen() {
    for (int batch = 0; batch < 10; batch++) {
      bench.counted(run, "A18-1" + batch, bench.accession("A18-1" + batch), 23, 15, 7);
    }
    bench.flush();
    assertThat(likeness.sentence(LATER)).contains("30 trays in 10 batches", "0.050 is used");

    likeness.choose(LATER, LikenessPrior.OWN, "thirty trays are closed", null);
    bench.flush();

    assertThat(likeness.history(LATER).standing()).isNotEqualTo(TrayHistory.Standing.USUAL);
    assertThat(likeness.prior(LATER).likeness().mean()).isGreaterThan(0.1);
    assertThat(likeness.prior(LATER.minusDays(1))).isEqualTo(TrayPrior.USUAL);
    assertThat(likeness.sentence(LATER)).contains("which is used here");
  }

  @Test
  void the_later_word_of_a_day_holds_and_the_earlier_stays_readable() {
    likeness.choose(LATER, LikenessPrior.OWN, "our mist is even", null);
    likeness.choose(LATER, LikenessPrior.USUAL, "half the trays stood dry", null);
    bench.flush();

    assertThat(likeness.chosen(LATER)).isEqualTo(LikenessPrior.USUAL);
    assertThat(choices.findAllByOrderByOnDateDescIdDesc())
        .extracting(TrayLikenessChoice::reason)
        .containsExactly("half the trays stood dry", "our mist is even");
  }

  @Test
  void what_stands_already_needs_no_choice_and_nothing_is_chosen_ahead_or_without_a_reason() {
    assertThatThrownBy(() -> likeness.choose(LATER, LikenessPrior.USUAL, "as ever", null))
        .hasMessageContaining("in force already");
    assertThatThrownBy(() -> likeness.choose(LATER, LikenessPrior.OWN, "  ", null))
        .hasMessageContaining("Say why");
    assertThatThrownBy(
            () -> likeness.choose(LocalDate.of(2999, 1, 1), LikenessPrior.OWN, "soon", null))
        .hasMessageContaining("still to come");
  }

  @Test
  void only_trays_closed_up_to_the_day_teach() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    bench.flush();

    assertThat(likeness.history(Bench.STUCK).trays()).isZero();
  }

  @Test
  void a_count_stored_later_is_in_the_next_answer() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    bench.flush();
    assertThat(likeness.history(LATER).trays()).isEqualTo(3);
    assertThat(likeness.history(LATER)).isSameAs(likeness.history(LATER));

    bench.counted(run, "A18-02", bench.accession("A18-02"), 20, 19);
    bench.flush();

    assertThat(likeness.history(LATER).trays()).isEqualTo(5);
  }
}
