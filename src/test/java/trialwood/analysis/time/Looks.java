package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Cuttings for the tests, looked at on days 14, 18, 21, 24, 28, 35, 42 and 56. */
final class Looks {

  private static final double[] DAYS = {0, 14, 18, 21, 24, 28, 35, 42, 56};
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Looks() {}

  /** A log-normal day to root, or none for a share of the cuttings. */
  static List<RootedBetween> logNormal(
      RandomGenerator random, int cuttings, double location, double scale, double never) {
    var looks = new ArrayList<RootedBetween>();
    for (int i = 0; i < cuttings; i++) {
      double z = NORMAL.inverseCumulativeProbability(random.nextDouble());
      double day =
          random.nextDouble() < never ? Double.POSITIVE_INFINITY : Math.exp(location + scale * z);
      looks.add(seen(day));
    }
    return looks;
  }

  /** Any intervals at all. */
  static List<RootedBetween> drawn(RandomGenerator random) {
    var looks = new ArrayList<RootedBetween>();
    int n = random.nextInt(1, 40);
    for (int i = 0; i < n; i++) {
      int after = random.nextInt(0, 30);
      double by =
          random.nextDouble() < 0.25 ? Double.POSITIVE_INFINITY : after + random.nextInt(1, 15);
      looks.add(new RootedBetween(after, by, random.nextInt(1, 5)));
    }
    return looks;
  }

  private static RootedBetween seen(double day) {
    for (int i = 1; i < DAYS.length; i++) {
      if (day <= DAYS[i]) {
        return new RootedBetween(DAYS[i - 1], DAYS[i], 1);
      }
    }
    return RootedBetween.notBy(DAYS[DAYS.length - 1], 1);
  }
}
