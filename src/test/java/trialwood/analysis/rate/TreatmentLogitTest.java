package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Interval;

class TreatmentLogitTest {

  @RepeatedTest(20)
  void the_fitted_proportion_is_the_pooled_one(RepetitionInfo repetition) {
    List<TreatmentTrays> treatments =
        drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    TreatmentLogit fit = TreatmentLogit.of(treatments).value().orElseThrow();
    for (int i = 0; i < treatments.size(); i++) {
      assertThat(fit.fitted(i)).isCloseTo(treatments.get(i).share(), within(1e-10));
      Interval interval = fit.interval(i, 0.95).value().orElseThrow();
      assertThat(interval.contains(fit.fitted(i))).isTrue();
    }
  }

  @RepeatedTest(20)
  void the_order_of_the_trays_changes_nothing(RepetitionInfo repetition) {
    List<TreatmentTrays> treatments =
        drawn(new SplittableRandom(repetition.getCurrentRepetition()));
    List<TreatmentTrays> reversed =
        treatments.stream()
            .map(
                group -> {
                  var trays = new ArrayList<>(group.trays());
                  Collections.reverse(trays);
                  return new TreatmentTrays(group.treatment(), trays);
                })
            .toList();
    TreatmentLogit one = TreatmentLogit.of(treatments).value().orElseThrow();
    TreatmentLogit other = TreatmentLogit.of(reversed).value().orElseThrow();
    assertThat(other.quasiTest().value().orElseThrow().statistic())
        .isCloseTo(one.quasiTest().value().orElseThrow().statistic(), within(1e-8));
    assertThat(BetaBinomial.of(reversed).value().orElseThrow().rho())
        .isCloseTo(BetaBinomial.of(treatments).value().orElseThrow().rho(), within(1e-8));
  }

  @RepeatedTest(10)
  void another_baseline_changes_no_test(RepetitionInfo repetition) {
    var treatments =
        new ArrayList<>(drawn(new SplittableRandom(repetition.getCurrentRepetition())));
    TreatmentLogit one = TreatmentLogit.of(treatments).value().orElseThrow();
    Collections.reverse(treatments);
    TreatmentLogit other = TreatmentLogit.of(treatments).value().orElseThrow();
    assertThat(other.binomialTest().statistic())
        .isCloseTo(one.binomialTest().statistic(), within(1e-8));
    assertThat(other.phi().value().orElseThrow())
        .isCloseTo(one.phi().value().orElseThrow(), within(1e-8));
  }

  @Test
  void one_treatment_is_no_comparison() {
    assertThat(TreatmentLogit.of(List.of(of("IBA", 10, 12))).lack())
        .contains("A comparison needs at least two treatments.");
    assertThat(TreatmentLogit.of(List.of()).lack()).isPresent();
  }

  @Test
  void a_treatment_in_which_all_rooted_is_named() {
    assertThat(TreatmentLogit.of(List.of(of("none", 10, 12), of("IBA", 24, 24))).lack())
        .contains("All or nothing rooted in IBA: its logit has no bounds.");
  }

  @Test
  void one_tray_a_treatment_shows_no_spread() {
    TreatmentLogit fit =
        TreatmentLogit.of(List.of(of("none", 10), of("IBA", 18))).value().orElseThrow();
    assertThat(fit.phi().lack())
        .contains("The spread between trays needs two trays of one treatment.");
    assertThat(fit.quasiTest().lack()).isPresent();
    assertThat(fit.quasi(1).lack()).isPresent();
    assertThat(fit.interval(1, 0.95).lack()).isPresent();
    assertThat(fit.binomialTest().pValue()).isBetween(0.0, 0.05);
  }

  @Test
  void trays_that_agree_exactly_leave_nothing_to_test_against() {
    TreatmentLogit fit =
        TreatmentLogit.of(List.of(of("none", 10, 10), of("IBA", 18, 18))).value().orElseThrow();
    assertThat(fit.quasiTest().lack())
        .contains("The trays of each treatment agree exactly: no spread to test against.");
  }

  @Test
  void trays_that_agree_by_luck_count_as_independent_cuttings() {
    // φ below 1 taken as 1 leaves the binomial model: Burnham and Anderson (2002), section 2.5
    TreatmentLogit even =
        TreatmentLogit.of(List.of(of("none", 10, 11, 10), of("IBA", 17, 18, 18)))
            .value()
            .orElseThrow();
    assertThat(even.phi().value().orElseThrow()).isLessThan(0.2);
    assertThat(even.cautiousTest().value().orElseThrow().statistic())
        .isCloseTo(even.binomialTest().statistic(), within(1e-12));
    Interval published = even.interval(1, 0.95).value().orElseThrow();
    Interval cautious = even.cautiousInterval(1, 0.95).value().orElseThrow();
    assertThat(cautious.low()).isLessThan(published.low() - 0.02);
    assertThat(cautious.high()).isGreaterThan(published.high() + 0.02);
  }

  @Test
  void trays_that_agree_exactly_still_have_the_doubt_of_their_number() {
    TreatmentLogit same =
        TreatmentLogit.of(List.of(of("none", 10, 10), of("IBA", 18, 18))).value().orElseThrow();
    assertThat(same.cautiousInterval(0, 0.95).value().orElseThrow().contains(10.0 / 24)).isTrue();
    assertThat(same.cautiousTest().value().orElseThrow().statistic())
        .isCloseTo(same.binomialTest().statistic(), within(1e-12));
  }

  @Test
  void trays_that_disagree_are_read_as_the_published_model_has_it() {
    TreatmentLogit uneven =
        TreatmentLogit.of(List.of(of("none", 3, 18, 9), of("IBA", 8, 22, 15)))
            .value()
            .orElseThrow();
    assertThat(uneven.cautiousTest()).isEqualTo(uneven.quasiTest());
    assertThat(uneven.cautiousInterval(1, 0.9)).isEqualTo(uneven.interval(1, 0.9));
  }

  @Test
  void columns_that_depend_on_each_other_are_lacking() {
    List<TrayCount> trays = of("IBA", 10, 12, 9).trays();
    double[][] design = {{1, 1}, {1, 1}, {1, 1}};
    assertThat(LogitModel.of(trays, design).lack())
        .contains("The columns of the design cannot be told apart.");
    assertThat(LogitModel.of(trays.subList(0, 1), new double[][] {{1, 0}}).lack()).isPresent();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LogitModel.of(trays, new double[][] {{1}}));
  }

  @Test
  void a_treatment_without_trays_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TreatmentTrays("IBA", List.of()))
        .withMessage("No tray of IBA has been counted.");
  }

  static TreatmentTrays of(String treatment, int... rooted) {
    var trays = new ArrayList<TrayCount>();
    for (int x : rooted) {
      trays.add(new TrayCount(x, 24));
    }
    return new TreatmentTrays(treatment, trays);
  }

  private static List<TreatmentTrays> drawn(SplittableRandom random) {
    var treatments = new ArrayList<TreatmentTrays>();
    int groups = random.nextInt(2, 5);
    for (int i = 0; i < groups; i++) {
      var trays = new ArrayList<TrayCount>();
      for (int tray = 0; tray < 5; tray++) {
        int stuck = random.nextInt(12, 60);
        trays.add(new TrayCount(random.nextInt(1, stuck), stuck));
      }
      treatments.add(new TreatmentTrays("T" + i, trays));
    }
    return treatments;
  }
}
