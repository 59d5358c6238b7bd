package trialwood.analysis;

/**
 * An interval for a true value.
 *
 * @param low lower end, in the unit of the value
 * @param high upper end, not below {@code low}
 * @param level confidence or posterior probability of the interval, 0 &lt; level &lt; 1
 */
public record Interval(double low, double high, double level) {

  public Interval {
    Refuse.unlessFinite(low, "lower end of an interval");
    Refuse.unlessFinite(high, "upper end of an interval");
    Refuse.unless(low <= high, "An interval cannot run from %s down to %s.", low, high);
    Refuse.unlessInside(level, "level of an interval");
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  public double width() {
    return high - low;
  }
}
