package trialwood.analysis;

/**
 * What a result believes of a true value: a distribution that can be asked for its mean, for the
 * chance that the true value reaches a line, and for an interval.
 */
public interface Belief {

  /** The expected true value, in the unit of the value. */
  double mean();

  /** Probability that the true value is {@code line} or more; never rises with the line. */
  double chanceAtLeast(double line);

  /**
   * The value below which the true value lies with the given probability.
   *
   * @param probability 0 &lt; probability &lt; 1
   * @throws IllegalArgumentException if it is not inside (0, 1)
   */
  double quantile(double probability);

  /**
   * The central interval: as much probability is left below as above.
   *
   * @param level probability inside, 0 &lt; level &lt; 1
   * @throws IllegalArgumentException if it is not inside (0, 1)
   */
  default Interval interval(double level) {
    Refuse.unlessInside(level, "level of an interval");
    return new Interval(quantile((1 - level) / 2), quantile((1 + level) / 2), level);
  }
}
