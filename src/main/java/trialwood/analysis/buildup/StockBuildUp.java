package trialwood.analysis.buildup;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * The number N of plants after cycles of cuttings whose rates are known. Every plant acts for
 * itself: a branching process,
 *
 * <pre>N(t+1) = Bin(N(t), stock survival) + Bin(cuttings · N(t), rooting · survival)
 * E(t+1) = m E(t),  Var(t+1) = m² Var(t) + v E(t)</pre>
 *
 * with m and v the mean and variance of what comes in place of one plant. Its generating function
 * is that of one plant, cycle within cycle, to the power of the plants one starts with; read on the
 * unit circle and turned back by a discrete Fourier transform it gives every probability.
 *
 * <p>Source: Harris, T. E. (1963) The Theory of Branching Processes, Springer, chapter I; Cooley,
 * J. W. and Tukey, J. W. (1965) An algorithm for the machine calculation of complex Fourier series.
 * Mathematics of Computation 19, 297–301
 *
 * @param plants to start with, at least 1
 * @param cycles the first first, at least one
 */
public record StockBuildUp(int plants, List<Cycle> cycles) {

  /** The most plants that are listed. */
  static final int MOST = (1 << 20) - 1;

  /** Beyond so many standard deviations above the mean the probability is less than rounding. */
  private static final double FAR = 40;

  public StockBuildUp {
    cycles = List.copyOf(cycles);
    Refuse.unless(plants > 0, "A build-up starts from at least one plant, not %d.", plants);
    Refuse.unless(!cycles.isEmpty(), "A build-up needs at least one cycle.");
  }

  /** What is expected after each cycle. */
  public List<Expectation> expectations() {
    var after = new ArrayList<Expectation>();
    Expectation last = new Expectation(plants, 0);
    for (Cycle cycle : cycles) {
      last = last.after(cycle);
      after.add(last);
    }
    return List.copyOf(after);
  }

  /** What is expected after the last cycle. */
  public Expectation expected() {
    return expectations().get(cycles.size() - 1);
  }

  /** Probability that no plant is left after the last cycle. */
  public double chanceOfNone() {
    return generating(new Complex(0, 0)).re();
  }

  /**
   * The probability of every number of plants after the last cycle, up to 40 standard deviations
   * above the mean; lacking where that is more than a million, for which {@link
   * Expectation#roughChanceAtLeast} serves.
   */
  public Answer<StockDistribution> distribution() {
    double possible = plants;
    for (Cycle cycle : cycles) {
      possible *= cycle.most();
    }
    Expectation end = expected();
    double most = Math.min(possible, Math.ceil(end.mean() + FAR * Math.sqrt(end.variance())));
    if (most > MOST) {
      return Answer.lacking("More than a million plants may come of it: too many to list.");
    }
    int size = Integer.highestOneBit(Math.max(1, (int) most)) * 2;
    Complex[] values = new Complex[size];
    for (int k = 0; k <= size / 2; k++) {
      values[k] = generating(Complex.onCircle(-2 * Math.PI * k / size));
      Complex mirrored = new Complex(values[k].re(), -values[k].im());
      values[(size - k) % size] = k == 0 ? values[0] : mirrored;
    }
    Fourier.transform(values);
    double[] chances = new double[(int) most + 1];
    for (int n = 0; n < chances.length; n++) {
      chances[n] = Math.max(0, values[n].re() / size);
    }
    return Answer.known(new StockDistribution(chances));
  }

  private Complex generating(Complex z) {
    Complex value = z;
    for (int t = cycles.size() - 1; t >= 0; t--) {
      value = cycles.get(t).generating(value);
    }
    return value.power(plants);
  }

  /**
   * Mean and variance of a number of plants.
   *
   * @param mean expected number
   * @param variance of the number
   */
  public record Expectation(double mean, double variance) {

    Expectation after(Cycle cycle) {
      return new Expectation(
          cycle.mean() * mean, cycle.mean() * cycle.mean() * variance + cycle.variance() * mean);
    }

    /** The normal approximation, with half a plant of continuity: a check on the exact answer. */
    public double roughChanceAtLeast(int target) {
      if (variance == 0) {
        return mean >= target ? 1 : 0;
      }
      return NormalDistribution.of(mean, Math.sqrt(variance)).survivalProbability(target - 0.5);
    }
  }
}
