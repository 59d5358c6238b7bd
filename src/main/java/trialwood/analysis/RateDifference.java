package trialwood.analysis;

import java.util.stream.DoubleStream;

/**
 * The difference p − p_check of two true proportions, from two batches of one sticking whose trays
 * are independent of each other. In fractions of 1: 0.05 is five percentage points.
 *
 * <p>Pr(p − p_check ≥ t) = ∫ f(p) Pr(p_check ≤ p − t) dp by quadrature, in pieces between the
 * points where p − t enters or leaves the range of p_check; no simulation, so the same counts
 * always give the same answer.
 */
public final class RateDifference implements Belief {

  private static final int POINTS = 96;
  private static final double[] WEIGHTS = Chebyshev.weights(POINTS);

  private final TrayPosterior candidate;
  private final TrayPosterior check;

  private RateDifference(TrayPosterior candidate, TrayPosterior check) {
    this.candidate = candidate;
    this.check = check;
  }

  /** The candidate's proportion less the check's. */
  public static RateDifference between(TrayPosterior candidate, TrayPosterior check) {
    return new RateDifference(candidate, check);
  }

  public TrayPosterior candidate() {
    return candidate;
  }

  public TrayPosterior check() {
    return check;
  }

  @Override
  public double mean() {
    return candidate.mean() - check.mean();
  }

  public double sd() {
    return Math.hypot(candidate.sd(), check.sd());
  }

  /** Pr(p − p_check ≥ line). */
  @Override
  public double chanceAtLeast(double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    Chebyshev density = candidate.density();
    double[] edges =
        DoubleStream.of(
                density.low(),
                angle(JointDensity.ofAngle(check.density().low()) + line),
                angle(JointDensity.ofAngle(check.density().high()) + line),
                density.high())
            .map(edge -> Math.min(density.high(), Math.max(density.low(), edge)))
            .sorted()
            .toArray();
    double chance = 0;
    for (int i = 1; i < edges.length; i++) {
      if (edges[i] > edges[i - 1]) {
        chance += piece(edges[i - 1], edges[i], line);
      }
    }
    return Math.min(1, Math.max(0, chance));
  }

  /**
   * Pr(p − p_check ≥ −margin): the candidate is no worse than the check by more than the margin.
   */
  public double chanceNotWorseBy(double margin) {
    return chanceAtLeast(-margin);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return Quantile.solve(line -> 1 - chanceAtLeast(line), -1, 1, probability);
  }

  private double piece(double low, double high, double line) {
    double[] angles = Chebyshev.points(low, high, POINTS);
    double chance = 0;
    for (int i = 0; i < POINTS; i++) {
      double checkBelow = check.chanceBelow(JointDensity.ofAngle(angles[i]) - line);
      chance += WEIGHTS[i] * candidate.density().at(angles[i]) * checkBelow;
    }
    return chance * (high - low);
  }

  private static double angle(double share) {
    return Math.asin(Math.sqrt(Math.min(1, Math.max(0, share))));
  }
}
