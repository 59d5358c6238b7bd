package trialwood.analysis.rate;

import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * The difference p − p_check of two true proportions, from two batches of one sticking whose trays
 * are independent of each other. In fractions of 1: 0.05 is five percentage points.
 *
 * <p>Pr(p − p_check ≥ t) = ∫ f(p) Pr(p_check ≤ p − t) dp, by quadrature over the p for which p − t
 * lies in the range of p_check; no simulation, so the same counts always give the same answer.
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
    double from = within(density, angle(JointDensity.ofAngle(check.density().low()) + line));
    double to = within(density, angle(JointDensity.ofAngle(check.density().high()) + line));
    double chance = density.integralTo(density.high()) - density.integralTo(to);
    double[] angles = Chebyshev.points(from, to, POINTS);
    for (int i = 0; i < POINTS; i++) {
      double checkBelow = check.chanceBelow(JointDensity.ofAngle(angles[i]) - line);
      chance += (to - from) * WEIGHTS[i] * density.at(angles[i]) * checkBelow;
    }
    return Math.min(1, Math.max(0, chance));
  }

  /**
   * Pr(p − p_check ≥ line) for any belief of the candidate, such as one after {@link FurtherTrays}:
   * ∫ g(p_check) Pr(p ≥ p_check + line) dp_check, over the check's posterior.
   */
  public static double chanceAtLeast(Belief candidate, TrayPosterior check, double line) {
    Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
    Chebyshev density = check.density();
    double[] angles = Chebyshev.points(density.low(), density.high(), POINTS);
    double chance = 0;
    for (int i = 0; i < POINTS; i++) {
      double above = candidate.chanceAtLeast(JointDensity.ofAngle(angles[i]) + line);
      chance += (density.high() - density.low()) * WEIGHTS[i] * density.at(angles[i]) * above;
    }
    return Math.min(1, Math.max(0, chance));
  }

  /** Pr(p − p_check ≥ −margin): no worse than the check by more than the margin. */
  public double chanceNotWorseBy(double margin) {
    return chanceAtLeast(-margin);
  }

  @Override
  public double quantile(double probability) {
    Refuse.unlessInside(probability, "probability of a quantile");
    return Quantile.solve(line -> 1 - chanceAtLeast(line), -1, 1, probability);
  }

  private static double within(Chebyshev density, double angle) {
    return Math.min(density.high(), Math.max(density.low(), angle));
  }

  private static double angle(double share) {
    return Math.asin(Math.sqrt(Math.min(1, Math.max(0, share))));
  }
}
