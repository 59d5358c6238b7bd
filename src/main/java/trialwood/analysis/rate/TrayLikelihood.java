package trialwood.analysis.rate;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Beta-binomial likelihood of tray counts at mean p and intra-tray correlation ρ, without the
 * binomial coefficients. With α = p(1 − ρ)/ρ and β = (1 − p)(1 − ρ)/ρ it is, for one tray,
 *
 * <pre>
 *  ∏ⱼ₍ⱼ﹤ₓ₎ (p(1 − ρ) + jρ) · ∏ⱼ₍ⱼ﹤ₙ₋ₓ₎ ((1 − p)(1 − ρ) + jρ) / ∏ⱼ₍ⱼ﹤ₙ₎ ((1 − ρ) + jρ)
 * </pre>
 *
 * a form that stays exact down to ρ = 0, where it is the binomial, and needs no gamma function. The
 * factor of a given j occurs once for every tray that reaches j, so the work grows with the largest
 * tray and not with the number of trays.
 */
final class TrayLikelihood {

  private final int[] rooted;
  private final int[] unrooted;
  private final int[] stuck;

  TrayLikelihood(List<TrayCount> trays) {
    rooted = reaching(trays, TrayCount::rooted);
    unrooted = reaching(trays, tray -> tray.stuck() - tray.rooted());
    stuck = reaching(trays, TrayCount::stuck);
  }

  /** The part that depends on ρ alone. */
  double logNormaliser(double rho) {
    return logRise(1 - rho, rho, stuck);
  }

  /** The part that depends on p and ρ; 1 − p is asked for apart to keep its digits near p = 1. */
  double logNumerator(double p, double oneMinusP, double rho) {
    return logRise(p * (1 - rho), rho, rooted) + logRise(oneMinusP * (1 - rho), rho, unrooted);
  }

  /** At index j the number of trays whose count is above j. */
  private static int[] reaching(List<TrayCount> trays, ToIntFunction<TrayCount> count) {
    int[] reaching = new int[trays.stream().mapToInt(count).max().orElse(0)];
    for (TrayCount tray : trays) {
      for (int j = 0; j < count.applyAsInt(tray); j++) {
        reaching[j]++;
      }
    }
    return reaching;
  }

  /** Σⱼ times[j] · log(base + j·step), one logarithm for each run of equal exponents. */
  private static double logRise(double base, double step, int[] times) {
    double log = 0;
    double product = 1;
    for (int j = 0; j < times.length; j++) {
      product *= base + j * step;
      boolean runEnds = j + 1 == times.length || times[j + 1] != times[j];
      if (runEnds || product < 1e-200 || product > 1e200) {
        log += times[j] * Math.log(product);
        product = 1;
      }
    }
    return log;
  }
}
