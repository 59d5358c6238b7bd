package trialwood.analysis.guide;

import org.junit.jupiter.api.Test;
import trialwood.analysis.rate.Allowance;
import trialwood.analysis.rate.BetaPosterior;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.analysis.rate.FourfoldTable;
import trialwood.analysis.rate.OddsRatio;
import trialwood.analysis.rate.OneSidedLimit;

/** Plain counts and off-types. */
class CountsGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void plain_counts() {
    GUIDE.states(
        "66 rooted of 72: Wilson %s, Clopper–Pearson %s.",
        Guide.percent(BinomialInterval.wilson(66, 72, 0.95)),
        Guide.percent(BinomialInterval.clopperPearson(66, 72, 0.95)));
  }

  @Test
  void a_guarantee() {
    GUIDE.states(
        "66 rooted of 72: at least %.1f %% by Wilson, at least %.1f %% by Clopper–Pearson, each with"
            + " 95 %%.",
        100 * OneSidedLimit.wilson(66, 72, 0.95).low(),
        100 * OneSidedLimit.clopperPearson(66, 72, 0.95).low());
  }

  @Test
  void two_plain_counts() {
    var table = new FourfoldTable(66, 72, 56, 72);
    OddsRatio.Limits limits = table.oddsRatio().exact(0.95).value().orElseThrow();
    GUIDE.states(
        "66 of 72 against 56 of 72: difference %.1f points, 95 %% interval %s points; Fisher's"
            + " two-sided p = %.3f; odds ratio %.2f, exact limits %.2f to %.2f; chance of being"
            + " better %.3f.",
        100 * table.difference(),
        Guide.points(table.newcombe(0.95)),
        table.fisher().twoSided(),
        table.oddsRatio().conditional().value().orElseThrow(),
        limits.low(),
        limits.high(),
        BetaPosterior.of(66, 72).chanceAheadOf(BetaPosterior.of(56, 72), 0));
  }

  @Test
  void off_types() {
    Allowance sixty = Allowance.of(60, 0.01);
    GUIDE.states(
        "60 plants at 1 %%: %d allowed. A sound lot is refused with %.1f %%; a lot with 5 %%"
            + " off-types passes with %.0f %%, one with 10 %% with %.1f %%.",
        sixty.allowed(),
        100 * sixty.riskOfRefusing(),
        100 * sixty.riskOfPassing(0.05),
        100 * sixty.riskOfPassing(0.10));
  }
}
