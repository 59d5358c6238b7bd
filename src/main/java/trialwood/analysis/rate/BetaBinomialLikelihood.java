package trialwood.analysis.rate;

import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import trialwood.analysis.Maximum.Surface;

/**
 * The beta-binomial log-likelihood of several treatments' trays at (logit μ₁, …, logit μₖ, logit
 * ρ), without binomial coefficients. With θ = ρ/(1 − ρ) one tray gives
 *
 * <pre>
 *  Σⱼ₍ⱼ﹤ₓ₎ log(μ + jθ) + Σⱼ₍ⱼ﹤ₙ₋ₓ₎ log(1 − μ + jθ) − Σⱼ₍ⱼ﹤ₙ₎ log(1 + jθ)
 * </pre>
 *
 * whose derivatives are plain sums.
 */
final class BetaBinomialLikelihood {

  private final List<TreatmentTrays> treatments;

  BetaBinomialLikelihood(List<TreatmentTrays> treatments) {
    this.treatments = treatments;
  }

  static double logCoefficient(TrayCount tray) {
    // at one half every outcome of the binomial has probability 2⁻ⁿ apart from its coefficient
    return BinomialDistribution.of(tray.stuck(), 0.5).logProbability(tray.rooted())
        + tray.stuck() * Math.log(2);
  }

  /** Derivative by θ at θ = 0 and the pooled means; at or below 0 the maximum lies at ρ = 0. */
  double slopeAtNoLikeness() {
    double slope = 0;
    for (TreatmentTrays treatment : treatments) {
      double mean = treatment.share();
      for (TrayCount tray : treatment.trays()) {
        slope +=
            pairs(tray.rooted()) / mean
                + pairs(tray.stuck() - tray.rooted()) / (1 - mean)
                - pairs(tray.stuck());
      }
    }
    return slope;
  }

  /** The pooled means, and ρ = 0.05. */
  double[] start() {
    double[] start = new double[treatments.size() + 1];
    for (int i = 0; i < treatments.size(); i++) {
      double mean = treatments.get(i).share();
      start[i] = Math.log(mean / (1 - mean));
    }
    start[treatments.size()] = Math.log(0.05 / 0.95);
    return start;
  }

  Surface at(double[] logits) {
    int last = treatments.size();
    double theta = Math.exp(logits[last]);
    Surface surface = Surface.flat(last + 1);
    double value = 0;
    for (int i = 0; i < last; i++) {
      value += add(surface, i, logits[i], theta);
    }
    return surface.withValue(value);
  }

  private double add(Surface surface, int i, double logit, double theta) {
    double mean = LogitModel.share(logit);
    double rest = LogitModel.share(-logit);
    Sums rooted = new Sums();
    Sums unrooted = new Sums();
    Sums stuck = new Sums();
    for (TrayCount tray : treatments.get(i).trays()) {
      rooted.add(mean, theta, tray.rooted());
      unrooted.add(rest, theta, tray.stuck() - tray.rooted());
      stuck.add(1, theta, tray.stuck());
    }
    int last = treatments.size();
    double perLogit = mean * rest;
    double byMean = rooted.inverse - unrooted.inverse;
    double byTheta = rooted.step + unrooted.step - stuck.step;
    surface.gradient()[i] += byMean * perLogit;
    surface.gradient()[last] += byTheta * theta;
    double[][] hessian = surface.hessian();
    hessian[i][i] +=
        -(rooted.inverse2 + unrooted.inverse2) * perLogit * perLogit
            + byMean * perLogit * (rest - mean);
    double cross = (unrooted.cross - rooted.cross) * perLogit * theta;
    hessian[i][last] += cross;
    hessian[last][i] += cross;
    hessian[last][last] +=
        (stuck.step2 - rooted.step2 - unrooted.step2) * theta * theta + byTheta * theta;
    return rooted.log + unrooted.log - stuck.log;
  }

  private static double pairs(double count) {
    return count * (count - 1) / 2;
  }

  /** Sums over j of log(base + jθ) and its derivatives. */
  private static final class Sums {
    private double log;
    private double inverse;
    private double inverse2;
    private double step;
    private double step2;
    private double cross;

    private void add(double base, double theta, int count) {
      for (int j = 0; j < count; j++) {
        double factor = base + j * theta;
        log += Math.log(factor);
        inverse += 1 / factor;
        inverse2 += 1 / (factor * factor);
        step += j / factor;
        step2 += (j / factor) * (j / factor);
        cross += j / (factor * factor);
      }
    }
  }
}
