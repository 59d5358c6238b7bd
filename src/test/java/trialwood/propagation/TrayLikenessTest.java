package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;

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
  @Autowired private TrayOutcomes outcomes;

  private StickingRun run;

  @BeforeEach
  void stick() {
    run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
  }

  @Test
  void a_nursery_with_few_trays_keeps_the_usual_likeness() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    bench.flush();

    TrayLikeness own = new TrayLikeness(outcomes, TrayLikeness.Setting.OWN);

    assertThat(own.history(LATER).trays()).isEqualTo(3);
    assertThat(own.prior(LATER)).isEqualTo(TrayPrior.USUAL);
    assertThat(own.sentence(LATER)).contains("3 trays", "from 30 on");
  }

  @Test
  void thirty_uneven_trays_teach_a_greater_likeness_and_the_setting_says_whether_it_is_used() {
    for (int batch = 0; batch < 10; batch++) {
      bench.counted(run, "A18-1" + batch, bench.accession("A18-1" + batch), 23, 15, 7);
    }
    bench.flush();

    TrayLikeness own = new TrayLikeness(outcomes, TrayLikeness.Setting.OWN);
    TrayLikeness usual = new TrayLikeness(outcomes, TrayLikeness.Setting.USUAL);

    assertThat(own.history(LATER).standing()).isNotEqualTo(TrayHistory.Standing.USUAL);
    assertThat(own.prior(LATER).likeness().mean()).isGreaterThan(0.1);
    assertThat(usual.prior(LATER)).isEqualTo(TrayPrior.USUAL);
    assertThat(usual.sentence(LATER)).contains("30 trays in 10 batches", "0.050 is used");
  }

  @Test
  void only_trays_closed_up_to_the_day_teach() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    bench.flush();

    assertThat(new TrayLikeness(outcomes, TrayLikeness.Setting.OWN).history(Bench.STUCK).trays())
        .isZero();
  }

  @Test
  void a_count_stored_later_is_in_the_next_answer() {
    bench.counted(run, "A18-01", bench.accession("A18-01"), 22, 21, 23);
    bench.flush();
    TrayLikeness likeness = new TrayLikeness(outcomes, TrayLikeness.Setting.OWN);
    assertThat(likeness.history(LATER).trays()).isEqualTo(3);
    assertThat(likeness.history(LATER)).isSameAs(likeness.history(LATER));

    bench.counted(run, "A18-02", bench.accession("A18-02"), 20, 19);
    bench.flush();

    assertThat(likeness.history(LATER).trays()).isEqualTo(5);
  }
}
