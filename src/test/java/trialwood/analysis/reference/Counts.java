package trialwood.analysis.reference;

import static trialwood.analysis.reference.Fits.number;
import static trialwood.analysis.reference.Fits.part;

import java.util.Map;
import java.util.function.Function;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.BetaPosterior;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.analysis.rate.FisherTest;
import trialwood.analysis.rate.FourfoldTable;
import trialwood.analysis.rate.OddsRatio;
import trialwood.analysis.rate.OneSidedLimit;

/** Plain counts, one and two: 01 and 02. */
final class Counts implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.ofEntries(
        Map.entry("wilson", row -> end(row, interval(row, BinomialInterval::wilson))),
        Map.entry("wilson_1s", row -> limit(row, OneSidedLimit.wilson(x(row), n(row), conf(row)))),
        Map.entry(
            "clopper_pearson", row -> end(row, interval(row, BinomialInterval::clopperPearson))),
        Map.entry(
            "clopper_pearson_1s",
            row -> limit(row, OneSidedLimit.clopperPearson(x(row), n(row), conf(row)))),
        Map.entry("jeffreys", row -> end(row, interval(row, BinomialInterval::jeffreys))),
        Map.entry("jeffreys.raw", row -> end(row, belief(row).interval(conf(row)))),
        Map.entry("jeffreys_1s", this::oneSidedJeffreys),
        Map.entry("jeffreys.posterior", row -> belief(row).mean()),
        Map.entry("fisher", this::fisher),
        Map.entry("odds_ratio", this::oddsRatio),
        Map.entry("newcombe", this::newcombe),
        Map.entry("pearson_chisq", row -> part(row, table(row).pearson(), this::chiSquare)),
        Map.entry("posterior.pr_gt", row -> belief(row).chanceAtLeast(row.number("threshold"))),
        Map.entry("posterior.pr_A_gt_B", this::ahead));
  }

  private interface IntervalMethod {
    Interval of(int hits, int n, double level);
  }

  private static int x(Row row) {
    return row.whole("x");
  }

  private static int n(Row row) {
    return row.whole("n");
  }

  private static double conf(Row row) {
    return row.number("conf");
  }

  private static BetaPosterior belief(Row row) {
    return BetaPosterior.of(x(row), n(row));
  }

  private static Interval interval(Row row, IntervalMethod method) {
    return method.of(x(row), n(row), conf(row));
  }

  private static Object end(Row row, Interval interval) {
    return switch (row.quantity()) {
      case "lower" -> interval.low();
      case "upper" -> interval.high();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object limit(Row row, OneSidedLimit limit) {
    return switch (row.quantity()) {
      case "lower" -> limit.low();
      case "upper" -> limit.high();
      default -> throw new UnknownRow(row);
    };
  }

  private Object oneSidedJeffreys(Row row) {
    return switch (row.quantity()) {
      case "lower" -> belief(row).quantile(1 - conf(row));
      case "upper" -> belief(row).quantile(conf(row));
      default -> throw new UnknownRow(row);
    };
  }

  private static FourfoldTable table(Row row) {
    return new FourfoldTable(row.whole("xA"), row.whole("nA"), row.whole("xB"), row.whole("nB"));
  }

  private Object fisher(Row row) {
    FisherTest test = table(row).fisher();
    return switch (row.quantity()) {
      case "p_two_sided" -> test.twoSided();
      case "p_greater" -> test.greater();
      case "p_less" -> test.less();
      default -> throw new UnknownRow(row);
    };
  }

  private Object oddsRatio(Row row) {
    OddsRatio odds = table(row).oddsRatio();
    return switch (row.quantity()) {
      case "sample_or" -> number(odds.sample());
      case "haldane_anscombe_or" -> odds.haldaneAnscombe();
      case "conditional_mle" -> number(odds.conditional());
      case "exact_lower" -> part(row, odds.exact(conf(row)), (r, limits) -> limits.low());
      case "exact_upper" -> part(row, odds.exact(conf(row)), (r, limits) -> limits.high());
      default -> throw new UnknownRow(row);
    };
  }

  private Object newcombe(Row row) {
    return row.quantity().equals("difference")
        ? table(row).difference()
        : end(row, table(row).newcombe(conf(row)));
  }

  private Object chiSquare(Row row, ChiSquareTest test) {
    return switch (row.quantity()) {
      case "statistic" -> test.statistic();
      case "df" -> test.degreesOfFreedom();
      case "p_value" -> test.pValue();
      default -> throw new UnknownRow(row);
    };
  }

  private Object ahead(Row row) {
    FourfoldTable table = table(row);
    return BetaPosterior.of(table.hits(), table.n())
        .chanceAheadOf(BetaPosterior.of(table.otherHits(), table.otherN()), row.number("delta"));
  }
}
