package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BetaBinomialTest {

  @Test
  void trays_more_even_than_chance_have_no_likeness() {
    TreatmentTrays even = TreatmentLogitTest.of("IBA", 18, 18, 17, 18);
    BetaBinomial fit = BetaBinomial.of(List.of(even)).value().orElseThrow();
    assertThat(fit.rho()).isZero();
    assertThat(fit.means().get(0)).isEqualTo(even.share());
    assertThat(fit.likenessTest().statistic()).isZero();
    assertThat(fit.likenessTest().pValueAtTheEdge()).isEqualTo(0.5);
    assertThat(fit.logitRhoError().lack()).contains("The trays are no more uneven than chance.");
  }

  @Test
  void the_binomial_is_the_case_without_likeness() {
    TreatmentTrays even = TreatmentLogitTest.of("IBA", 18, 18, 17, 18);
    BetaBinomial fit = BetaBinomial.of(List.of(even)).value().orElseThrow();
    // standard error of a logit, closed form: 1/√(np(1 − p))
    double p = even.share();
    assertThat(fit.logitMeanErrors().get(0))
        .isCloseTo(1 / Math.sqrt(96 * p * (1 - p)), within(1e-12));
    assertThat(fit.logLikelihood()).isEqualTo(fit.binomialLogLikelihood());
  }

  @Test
  void a_slope_at_no_likeness_agrees_with_the_likelihood() {
    var likelihood = new BetaBinomialLikelihood(List.of(TreatmentLogitTest.of("IBA", 23, 22, 9)));
    double mean = 54.0 / 72;
    double logit = Math.log(mean / (1 - mean));
    double at0 = likelihood.at(new double[] {logit, -40}).value();
    double near = likelihood.at(new double[] {logit, Math.log(1e-6)}).value();
    assertThat((near - at0) / 1e-6).isCloseTo(likelihood.slopeAtNoLikeness(), within(0.5));
  }

  @Test
  void the_gradient_and_the_hessian_are_those_of_the_value() {
    var likelihood =
        new BetaBinomialLikelihood(
            List.of(
                TreatmentLogitTest.of("none", 10, 15, 3), TreatmentLogitTest.of("IBA", 23, 22, 9)));
    double[] at = {0.2, -0.3, -2};
    var here = likelihood.at(at);
    for (int i = 0; i < 3; i++) {
      double[] more = at.clone();
      double[] less = at.clone();
      more[i] += 1e-5;
      less[i] -= 1e-5;
      var up = likelihood.at(more);
      var down = likelihood.at(less);
      assertThat((up.value() - down.value()) / 2e-5).isCloseTo(here.gradient()[i], within(1e-5));
      for (int j = 0; j < 3; j++) {
        assertThat((up.gradient()[j] - down.gradient()[j]) / 2e-5)
            .isCloseTo(here.hessian()[i][j], within(1e-5));
      }
    }
  }

  @Test
  void all_or_nothing_is_named() {
    assertThat(BetaBinomial.of(List.of(TreatmentLogitTest.of("IBA", 24, 24))).lack())
        .contains("All or nothing rooted in IBA: its mean has no interval.");
    assertThat(BetaBinomial.of(List.of(TreatmentLogitTest.of("none", 0, 0))).lack()).isPresent();
  }

  @Test
  void single_trays_cannot_show_likeness() {
    assertThat(BetaBinomial.of(List.of(TreatmentLogitTest.of("IBA", 12))).lack())
        .contains("The likeness inside a tray needs two trays of one treatment.");
  }

  @Test
  void a_tray_of_one_cutting_is_allowed() {
    var trays =
        new TreatmentTrays(
            "IBA", List.of(new TrayCount(1, 1), new TrayCount(0, 1), new TrayCount(1, 1)));
    assertThat(BetaBinomial.of(List.of(trays)).value().orElseThrow().rho()).isZero();
  }
}
