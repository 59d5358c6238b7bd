package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.Refuse;

/**
 * How far an estimate moves when other trays had been stuck: whole trays are drawn with
 * replacement, as many as there are, and the estimate made again, {@value #DRAWS} times with a
 * fixed seed. Cuttings of one tray stay together, so likeness inside a tray widens the answer as it
 * should.
 *
 * <p>Source: Efron, B. and Tibshirani, R. J. (1993) An Introduction to the Bootstrap. Chapman and
 * Hall; Davison, A. C. and Hinkley, D. V. (1997) Bootstrap Methods and their Application.
 * Cambridge, section 3.8, for whole groups
 *
 * @param standardError of the estimate, its unit
 * @param low the 2.5 % point of the draws
 * @param high the 97.5 % point
 * @param made draws that gave an estimate
 * @param lacking draws that gave none; many of them make the answer doubtful
 */
public record TrayResample(double standardError, double low, double high, int made, int lacking) {

  public static final int DRAWS = 400;
  private static final long SEED = 20_260_401;

  /** Fewer trays than this say nothing about trays. */
  private static final int FEWEST_TRAYS = 3;

  /**
   * Lacking for fewer than {@value #FEWEST_TRAYS} trays, and if more than half of the draws give no
   * estimate.
   *
   * @param trays the looks at each tray
   * @param estimate of all looks together; empty where it cannot be made
   */
  public static Answer<TrayResample> of(
      List<List<RootedBetween>> trays, Function<List<RootedBetween>, Optional<Double>> estimate) {
    Refuse.unless(trays.stream().noneMatch(List::isEmpty), "Nobody has looked at a tray.");
    if (trays.size() < FEWEST_TRAYS) {
      return Answer.lacking("The spread between trays needs at least three trays.");
    }
    var random = new SplittableRandom(SEED);
    var found = new ArrayList<Double>();
    for (int draw = 0; draw < DRAWS; draw++) {
      var looks = new ArrayList<RootedBetween>();
      for (int i = 0; i < trays.size(); i++) {
        looks.addAll(trays.get(random.nextInt(trays.size())));
      }
      estimate.apply(looks).ifPresent(found::add);
    }
    if (found.size() < DRAWS / 2) {
      return Answer.lacking("Most draws of trays gave no estimate.");
    }
    found.sort(null);
    double mean = found.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double squares = found.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    return Answer.known(
        new TrayResample(
            Math.sqrt(squares / (found.size() - 1)),
            found.get((int) (0.025 * found.size())),
            found.get((int) (0.975 * found.size())),
            found.size(),
            DRAWS - found.size()));
  }

  /** The middle 95 % of the draws. */
  public Interval interval() {
    return new Interval(low, high, 0.95);
  }
}
