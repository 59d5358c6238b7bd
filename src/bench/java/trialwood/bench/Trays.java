package trialwood.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;

/** The rooting of a batch of three trays of 24, counts that no call before had in that order. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Trays {

  private static final int CANDIDATES = 5000;

  private final SplittableRandom numbers = new SplittableRandom(2);
  private List<TrayCount> batch = List.of();
  private List<List<TrayCount>> batches = List.of();

  @Setup(Level.Invocation)
  public void stick() {
    batch = trays();
  }

  @Setup
  public void stickThemAll() {
    var all = new ArrayList<List<TrayCount>>();
    for (int i = 0; i < CANDIDATES; i++) {
      all.add(trays());
    }
    batches = List.copyOf(all);
  }

  private List<TrayCount> trays() {
    double rate = 0.3 + 0.6 * numbers.nextDouble();
    var trays = new ArrayList<TrayCount>();
    for (int tray = 0; tray < 3; tray++) {
      int rooted = 0;
      for (int cutting = 0; cutting < 24; cutting++) {
        rooted += numbers.nextDouble() < rate ? 1 : 0;
      }
      trays.add(new TrayCount(rooted, 24));
    }
    return List.copyOf(trays);
  }

  /** Mean, interval and the chance of 80 % or more. */
  @Benchmark
  public double posterior() {
    TrayPosterior posterior = TrayPosterior.of(batch);
    return posterior.mean() + posterior.interval(0.95).low() + posterior.chanceAtLeast(0.8);
  }

  /** What a gate asks of the rooting of 5,000 candidates, the check of their run beside them. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public double fiveThousandCandidates() {
    TrayPosterior check = TrayPosterior.of(batches.get(0));
    double sum = 0;
    for (List<TrayCount> trays : batches) {
      TrayPosterior posterior = TrayPosterior.of(trays);
      sum += posterior.interval(0.95).low() + posterior.chanceAtLeast(0.8);
      sum += RateDifference.between(posterior, check).chanceNotWorseBy(0.1);
    }
    return sum;
  }
}
