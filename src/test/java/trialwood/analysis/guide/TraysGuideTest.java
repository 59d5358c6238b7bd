package trialwood.analysis.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.rate.BetaBinomial;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayDispersion;
import trialwood.analysis.rate.TrayHistory;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.Trays;
import trialwood.analysis.rate.TreatmentLogit;
import trialwood.analysis.rate.TreatmentTrays;

/** Trays of one batch, of treatments and of the whole nursery. */
class TraysGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void trays_of_one_batch() {
    TrayPosterior even = TrayPosterior.of(Trays.of24(22, 21, 23));
    TrayPosterior uneven = TrayPosterior.of(Trays.of24(23, 22, 9));
    TrayPosterior single = TrayPosterior.of(Trays.of24(21));
    GUIDE.states(
        "22, 21, 23 of 24: mean %.0f %%, 95 %% interval %s, chance of 80 %% or more %.2f.",
        100 * even.mean(), Guide.percent(even.interval(0.95)), even.chanceAtLeast(0.8));
    GUIDE.states(
        "23, 22, 9 of 24: mean %.0f %%, 95 %% interval %s, chance of 80 %% or more %.2f.",
        100 * uneven.mean(), Guide.percent(uneven.interval(0.95)), uneven.chanceAtLeast(0.8));
    GUIDE.states(
        "A single tray of 21 in 24: mean %.0f %%, 95 %% interval %s.",
        100 * single.mean(), Guide.percent(single.interval(0.95)));
  }

  @Test
  void batch_against_check() {
    RateDifference difference =
        RateDifference.between(
            TrayPosterior.of(Trays.of24(22, 21, 23)), TrayPosterior.of(Trays.of24(23, 24, 22)));
    GUIDE.states(
        "Candidate 22, 21, 23, check 23, 24, 22 of 24: difference %+.1f points, 95 %% interval %s"
            + " points; the chance that it is no more than 10 points below the check is %.2f.",
        100 * difference.mean(),
        Guide.points(difference.interval(0.95)),
        difference.chanceNotWorseBy(0.10));
  }

  @Test
  void spread_between_trays() {
    TrayDispersion spread = TrayDispersion.of(Trays.of24(23, 22, 9)).value().orElseThrow();
    GUIDE.states(
        "23, 22, 9 of 24: X² = %.1f on %d df, φ = %.1f, p = %.7f.",
        spread.chiSquare(), spread.degreesOfFreedom(), spread.phi(), spread.pValue());
  }

  @Test
  void several_treatments() {
    List<TreatmentTrays> treatments =
        List.of(
            new TreatmentTrays("none", Trays.of24(12, 7, 16)),
            new TreatmentTrays("1,000 ppm", Trays.of24(17, 21, 12)),
            new TreatmentTrays("3,000 ppm", Trays.of24(20, 23, 16)));
    TreatmentLogit fit = TreatmentLogit.of(treatments).value().orElseThrow();
    TreatmentLogit.FTest test = fit.quasiTest().value().orElseThrow();
    BetaBinomial beta = BetaBinomial.of(treatments).value().orElseThrow();
    ChiSquareTest ratio = beta.treatmentTest(BetaBinomial.pooled(treatments).value().orElseThrow());
    GUIDE.states(
        "Pooled %.0f %%, %.0f %%, %.0f %%; φ = %.1f; F = %.2f on %d and %d df, p = %.3f."
            + " Beta-binomial: ρ = %.3f, χ² = %.1f on %d df, p = %.3f.",
        100 * fit.fitted(0),
        100 * fit.fitted(1),
        100 * fit.fitted(2),
        fit.phi().value().orElseThrow(),
        test.statistic(),
        test.numerator(),
        test.denominator(),
        test.pValue(),
        beta.rho(),
        ratio.statistic(),
        ratio.degreesOfFreedom(),
        ratio.pValue());
    assertThat(fit.binomialTest().pValue()).isLessThan(0.001);
  }

  @Test
  void the_nurserys_own_trays() {
    TrayHistory history =
        TrayHistory.of(
            List.of(
                Trays.of24(22, 21, 15),
                Trays.of24(20, 12, 22),
                Trays.of24(15, 20, 9),
                Trays.of24(23, 24, 17),
                Trays.of24(5, 14, 12),
                Trays.of24(19, 11, 20),
                Trays.of24(21, 23, 14),
                Trays.of24(12, 19, 16),
                Trays.of24(24, 22, 18),
                Trays.of24(17, 9, 19)));
    GUIDE.states("24, 22, 18; 17, 9, 19: mean of ρ %.3f.", history.meanLikeness());
  }
}
