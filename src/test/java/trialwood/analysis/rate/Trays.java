package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Tray counts for the tests. */
public final class Trays {

  private Trays() {}

  /** Trays of 24 with so many rooted. */
  public static List<TrayCount> of24(int... rooted) {
    return Arrays.stream(rooted).mapToObj(x -> new TrayCount(x, 24)).toList();
  }

  /** One to eight trays of one to 72 cuttings, none of them full. */
  public static List<TrayCount> drawn(SplittableRandom random) {
    double share = random.nextDouble();
    return IntStream.range(0, random.nextInt(1, 9))
        .mapToObj(
            i -> {
              int stuck = random.nextInt(1, 73);
              int rooted =
                  (int) IntStream.range(0, stuck).filter(j -> random.nextDouble() < share).count();
              return new TrayCount(Math.min(rooted, stuck - 1), stuck);
            })
        .toList();
  }
}
