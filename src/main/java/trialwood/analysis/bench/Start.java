package trialwood.analysis.bench;

import java.util.List;
import trialwood.analysis.Refuse;

/**
 * How many to start with so that enough are left after several steps: target ÷ (rate × rate × …).
 * On average, that is; half of the time fewer are left, which is what a margin is for.
 *
 * @param exact before rounding
 * @param needed rounded up to whole ones
 * @param withMargin with the margin on the exact number, rounded up
 */
public record Start(double exact, long needed, long withMargin) {

  /** A whole number within this of the quotient is meant, and floating point missed it. */
  private static final double SLIP = 1e-9;

  /**
   * @param target wanted at the end, at least 1
   * @param rates what each step leaves, fractions above 0 and up to 1
   * @param margin more to be on the safe side, a fraction from 0 up
   */
  public static Start with(int target, List<Double> rates, double margin) {
    Refuse.unless(target > 0, "At least one must be wanted.");
    Refuse.unless(margin >= 0 && Double.isFinite(margin), "A margin cannot be negative.");
    double left = 1;
    for (double rate : rates) {
      Refuse.unless(rate > 0 && rate <= 1, "A rate lies above 0 and up to 100 %%.");
      left *= rate;
    }
    double exact = target / left;
    return new Start(exact, whole(exact), whole(exact * (1 + margin)));
  }

  private static long whole(double exact) {
    return (long) Math.ceil(exact * (1 - SLIP));
  }
}
