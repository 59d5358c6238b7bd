package trialwood.analysis.buildup;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * The chance of having enough plants when rooting, weaning and survival are only believed: the
 * rates of every cycle are drawn from what is believed of them, the plants then live or die one by
 * one. The same question always gives the same answer, for the draws start from one fixed seed.
 *
 * @param target plants wanted
 * @param draws how often the build-up was played through
 * @param chance share of the draws that reached the target
 * @param simulationError standard error of that share, from the number of draws alone
 * @param low number of plants that 19 in 20 draws reached
 * @param middle number that half of the draws reached
 * @param high number that 1 in 20 draws reached
 */
public record BuildUpForecast(
    int target, int draws, double chance, double simulationError, int low, int middle, int high) {

  private static final long SEED = 20_240_113;
  private static final int DRAWS = 4_000;

  /**
   * Lacking where numbers grow beyond what can be counted.
   *
   * @param plants to start with, at least 1
   * @param cycles the first first, at least one
   * @param target plants wanted after the last, at least 1
   */
  public static Answer<BuildUpForecast> of(int plants, List<UncertainCycle> cycles, int target) {
    Refuse.unless(plants > 0, "A build-up starts from at least one plant, not %d.", plants);
    Refuse.unless(!cycles.isEmpty(), "A build-up needs at least one cycle.");
    Refuse.unless(target > 0, "At least one plant must be wanted, not %d.", target);
    double most = plants;
    for (UncertainCycle cycle : cycles) {
      most *= cycle.cuttings() + 1.0;
    }
    if (most > Integer.MAX_VALUE) {
      return Answer.lacking(
          "More than two thousand million plants are possible: too many to count.");
    }
    var random = new SplittableRandom(SEED);
    int[] reached = new int[DRAWS];
    for (int draw = 0; draw < DRAWS; draw++) {
      int stock = plants;
      for (UncertainCycle cycle : cycles) {
        Cycle rates = cycle.draw(random);
        stock =
            alive(stock, rates.stockSurvival(), random)
                + alive(stock * rates.cuttings(), rates.success(), random);
      }
      reached[draw] = stock;
    }
    Arrays.sort(reached);
    double chance =
        Arrays.stream(reached).filter(stock -> stock >= target).count() / (double) DRAWS;
    return Answer.known(
        new BuildUpForecast(
            target,
            DRAWS,
            chance,
            Math.sqrt(chance * (1 - chance) / DRAWS),
            reached[DRAWS / 20],
            reached[DRAWS / 2],
            reached[DRAWS - 1 - DRAWS / 20]));
  }

  private static int alive(int plants, double chance, SplittableRandom random) {
    if (plants == 0 || chance == 0) {
      return 0;
    }
    return chance == 1
        ? plants
        : BinomialDistribution.of(plants, chance).inverseCumulativeProbability(random.nextDouble());
  }
}
