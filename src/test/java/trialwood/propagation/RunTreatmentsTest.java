package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.testing.RecordTest;

@RecordTest
@Import(PropagationSlice.class)
class RunTreatmentsTest {

  private static final LocalDate LATER = LocalDate.of(2022, 7, 20);
  private static final Treatment STRONGER = new Treatment(null, null, null, 8000);

  @Autowired private Bench bench;
  @Autowired private RunTreatments treatments;

  private StickingRun run;
  private UUID clone;

  @BeforeEach
  void stick() {
    run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    clone = bench.accession("A18-01");
  }

  private void batch(@Nullable Treatment treatment, String code, int... rooted) {
    bench.treated(run, code, clone, treatment, rooted);
  }

  /**
   * By hand, 24 a tray: X² = 40.667/5.99537 + 24.667/3.55093 = 13.7295 on 4 df, φ = 3.4324; change
   * in deviance 2 Σ O ln(O/E) = 18.2051, F = 5.304; logit of the first ln(35/37), its error
   * √(φ(1/35 + 1/37)) = 0.43685, t of 4 df 2.7764 from the tables.
   */
  @Test
  void two_strengths_of_one_clone_are_compared_by_the_spread_of_their_trays() {
    batch(null, "B-1", 12, 7, 16);
    batch(STRONGER, "B-2", 20, 23, 16);

    TreatmentTable table = treatments.of(run, LATER).get(0);

    assertThat(table.code()).isEqualTo("A18-01");
    assertThat(table.treatments())
        .extracting(TreatmentTable.Row::treatment)
        .containsExactly("K-IBA, 2000 ppm, quick dip", "K-IBA, 8000 ppm, quick dip");
    TreatmentTable.Test test = Objects.requireNonNull(table.tested());
    assertThat(test.phi()).isEqualTo(3.4324, within(1e-3));
    assertThat(test.f()).isEqualTo(5.304, within(2e-3));
    assertThat(test.numerator()).isEqualTo(1);
    assertThat(test.denominator()).isEqualTo(4);
    assertThat(test.p()).isBetween(0.05, 0.10);
    TreatmentTable.Row usual = table.treatments().get(0);
    assertThat(usual.share()).isEqualTo(35.0 / 72, within(1e-12));
    assertThat(usual.interval()).isNotNull();
    assertThat(usual.interval().low()).isEqualTo(0.2195, within(1e-3));
    assertThat(usual.interval().high()).isEqualTo(0.7609, within(1e-3));
  }

  @Test
  void one_treatment_in_two_batches_is_no_comparison() {
    batch(null, "B-1", 12, 7);
    batch(new Treatment(null, "K-IBA", null, 2000), "B-2", 20, 23);

    assertThat(treatments.of(run, LATER)).isEmpty();
  }

  @Test
  void a_treatment_in_which_nothing_rooted_is_named_instead_of_tested() {
    batch(null, "B-1", 0, 0, 0);
    batch(STRONGER, "B-2", 20, 23, 16);

    TreatmentTable table = treatments.of(run, LATER).get(0);

    assertThat(table.tested()).isNull();
    assertThat(table.lacking())
        .isEqualTo("All or nothing rooted in K-IBA, 2000 ppm, quick dip: its logit has no bounds.");
    assertThat(table.treatments()).extracting(TreatmentTable.Row::interval).containsOnlyNulls();
    assertThat(table.treatments()).extracting(TreatmentTable.Row::rooted).containsExactly(0L, 59L);
  }

  @Test
  void one_tray_of_each_shows_no_spread_to_test_against() {
    batch(null, "B-1", 12);
    batch(STRONGER, "B-2", 20);

    TreatmentTable table = treatments.of(run, LATER).get(0);

    assertThat(table.tested()).isNull();
    assertThat(table.lacking()).isNotBlank();
  }

  @Test
  void before_the_count_there_is_nothing_to_compare() {
    batch(null, "B-1", 12, 7, 16);
    batch(STRONGER, "B-2", 20, 23, 16);

    assertThat(treatments.of(run, Bench.STUCK)).isEmpty();
  }
}
