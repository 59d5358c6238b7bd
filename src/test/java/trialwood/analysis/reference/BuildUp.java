package trialwood.analysis.reference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import trialwood.analysis.Answer;
import trialwood.analysis.buildup.CuttingsNeeded;
import trialwood.analysis.buildup.Cycle;
import trialwood.analysis.buildup.StockBuildUp;
import trialwood.analysis.buildup.StockDistribution;

/** Stock build-up: 10. */
final class BuildUp implements Family {

  private final Map<StockBuildUp, Answer<StockDistribution>> distributions =
      new ConcurrentHashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "buildup", this::stock,
        "cuttings_needed.binomial", BuildUp::atRate,
        "cuttings_needed.beta_binomial", BuildUp::afterTrial);
  }

  private Object stock(Row row) {
    StockBuildUp stock = buildUp(row);
    return switch (row.quantity()) {
      case "expected" -> stock.expectations().get((int) row.keyNumber() - 1).mean();
      case "variance" -> stock.expectations().get((int) row.keyNumber() - 1).variance();
      case "pr_at_least_target" ->
          of(distribution(stock).map(plants -> plants.chanceAtLeast(row.whole("target"))));
      case "pr_none_left" -> stock.chanceOfNone();
      case "quantile" -> of(distribution(stock).map(plants -> plants.quantile(row.keyNumber())));
      default -> throw new UnknownRow(row);
    };
  }

  private static Object atRate(Row row) {
    return needed(
        row,
        CuttingsNeeded.atRate(row.whole("need"), row.number("rate"), row.number("confidence")));
  }

  private static Object afterTrial(Row row) {
    return needed(
        row,
        CuttingsNeeded.afterTrial(
            row.whole("need"),
            row.whole("trial_rooted"),
            row.whole("trial_stuck"),
            row.number("confidence")));
  }

  private static Object needed(Row row, Answer<CuttingsNeeded> needed) {
    return switch (row.quantity()) {
      case "cuttings" -> of(needed.map(CuttingsNeeded::cuttings));
      case "achieved_probability" -> of(needed.map(CuttingsNeeded::chance));
      case "expected_only" -> of(needed.map(CuttingsNeeded::expectedOnly));
      default -> throw new UnknownRow(row);
    };
  }

  private Answer<StockDistribution> distribution(StockBuildUp stock) {
    return distributions.computeIfAbsent(stock, StockBuildUp::distribution);
  }

  private static StockBuildUp buildUp(Row row) {
    double[] cuttings = row.numbers("cuttings_per_plant");
    double[] rooting = row.numbers("rooting");
    double[] survival = row.numbers("survival");
    double[] stockSurvival = row.numbers("stock_survival");
    return new StockBuildUp(
        row.whole("start_plants"),
        IntStream.range(0, cuttings.length)
            .mapToObj(t -> new Cycle((int) cuttings[t], rooting[t], survival[t], stockSurvival[t]))
            .toList());
  }

  private static double of(Answer<? extends Number> answer) {
    return answer.value().map(Number::doubleValue).orElse(Double.NaN);
  }
}
