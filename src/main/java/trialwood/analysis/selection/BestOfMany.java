package trialwood.analysis.selection;

import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Refuse;

/**
 * The best few of a finite number of candidates. Even if all were alike, the best of many would
 * look good: the mean of the k best of n normal values is expected i standard deviations above the
 * mean of all (the mean of the expected order statistics). With g the density of the best value
 * that is not kept among n − 1 others,
 *
 * <pre>i = (n/k) ∫ φ(x) g(x) dx,  g(x) ∝ Φ(x)ⁿ⁻ᵏ⁻¹ (1 − Φ(x))ᵏ⁻¹ φ(x)</pre>
 *
 * by the trapezoid rule, which is exact to rounding for such curves.
 *
 * <p>Sources: Harter, H. L. (1961) Expected values of normal order statistics. Biometrika 48,
 * 151–165; for the shortcut Burrows, P. M. (1972) Expected selection differentials for directional
 * selection. Biometrics 28, 1091–1100
 *
 * @param selected k, 1 to n
 * @param candidates n
 */
public record BestOfMany(int selected, int candidates) {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int STEPS = 400;
  private static final double FAR = 36;

  /** Where the log of g lies this far below its peak, nothing is left of it. */
  private static final double NEGLIGIBLE = 60;

  public BestOfMany {
    Refuse.unless(candidates > 0, "Selection needs at least one candidate, not %d.", candidates);
    Refuse.unless(
        selected > 0 && selected <= candidates,
        "%d cannot be selected from %d.",
        selected,
        candidates);
  }

  /** The exact intensity i, in standard deviations; 0 where all are kept. */
  public double intensity() {
    if (selected == candidates) {
      return 0;
    }
    double peak = peak();
    double top = log(peak);
    double from = edge(peak, -FAR, top);
    double step = (edge(peak, FAR, top) - from) / STEPS;
    double heights = 0;
    double mass = 0;
    for (int i = 0; i <= STEPS; i++) {
      double x = from + i * step;
      double g = Math.exp(log(x) - top);
      heights += g * NORMAL.density(x);
      mass += g;
    }
    return heights / mass * candidates / selected;
  }

  /** Burrows' approximation, i − (n − k)/(2k(n + 1)i) with the i of very many candidates. */
  public double burrows() {
    if (selected == candidates) {
      return 0;
    }
    double many = Truncation.keeping((double) selected / candidates).intensity();
    double left = (double) candidates - selected;
    return many - left / (2.0 * selected * (candidates + 1.0) * many);
  }

  /**
   * What the k best are truly worth above the mean of all, where a share of the spread that is seen
   * is real: i × reliability × spread. What they seem to be worth is i × spread; the rest is the
   * winner's curse.
   *
   * @param spread standard deviation of the values seen, 0 or above
   * @param reliability real variance ÷ variance seen, 0 to 1
   */
  public double trueLead(double spread, double reliability) {
    Refuse.unless(
        reliability >= 0 && reliability <= 1,
        "A reliability lies between 0 and 1, not at %s.",
        reliability);
    return apparentLead(spread) * reliability;
  }

  /** How far above the mean of all the k best are expected to look. */
  public double apparentLead(double spread) {
    Refuse.unless(
        spread >= 0 && Double.isFinite(spread), "A spread is 0 or above, not %s.", spread);
    return intensity() * spread;
  }

  /** log g, less its constant; concave. */
  private double log(double x) {
    double below = Math.log(NORMAL.cumulativeProbability(x));
    double above = Math.log(NORMAL.survivalProbability(x));
    return (candidates - selected - 1.0) * below + (selected - 1.0) * above - x * x / 2;
  }

  private double peak() {
    double low = -FAR;
    double high = FAR;
    for (int step = 0; step < 100; step++) {
      double third = (high - low) / 3;
      if (log(low + third) < log(high - third)) {
        low += third;
      } else {
        high -= third;
      }
    }
    return (low + high) / 2;
  }

  /** Where g has become negligible, between its peak and a far point. */
  private double edge(double peak, double far, double top) {
    double inside = peak;
    double outside = far;
    for (int step = 0; step < 60; step++) {
      double middle = (inside + outside) / 2;
      if (log(middle) > top - NEGLIGIBLE) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return outside;
  }
}
