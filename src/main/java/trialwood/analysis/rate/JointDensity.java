package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;

/**
 * The unnormalised posterior of a batch's true proportion p and intra-tray correlation ρ, on the
 * angles v and w with p = sin² v and ρ = sin² w, both in (0, π/2).
 */
final class JointDensity {

  /** Log density this far below the peak counts for nothing: e⁻²⁴ is 4·10⁻¹¹. */
  private static final double NEGLIGIBLE = 24;

  private static final int SCAN_POINTS = 16;

  /** The rectangle of angles outside which the density is negligible. */
  record Window(double shareLow, double shareHigh, double likenessLow, double likenessHigh) {

    double area() {
      return (shareHigh - shareLow) * (likenessHigh - likenessLow);
    }
  }

  private final TrayLikelihood likelihood;
  private final TrayPrior prior;

  JointDensity(List<TrayCount> trays, TrayPrior prior) {
    this.likelihood = new TrayLikelihood(trays);
    this.prior = prior;
  }

  /** p or ρ of its angle. */
  static double ofAngle(double angle) {
    double sine = Math.sin(angle);
    return sine * sine;
  }

  /** Log density, at [i][k] for the i-th angle of ρ and the k-th angle of p. */
  double[][] logOn(double[] shareAngles, double[] likenessAngles) {
    double[] logPrior = Arrays.stream(shareAngles).map(prior.share()::logDensityOfAngle).toArray();
    double[][] log = new double[likenessAngles.length][shareAngles.length];
    for (int i = 0; i < likenessAngles.length; i++) {
      double rho = ofAngle(likenessAngles[i]);
      double logOfRho =
          prior.likeness().logDensityOfAngle(likenessAngles[i]) - likelihood.logNormaliser(rho);
      for (int k = 0; k < shareAngles.length; k++) {
        double p = ofAngle(shareAngles[k]);
        double oneMinusP = ofAngle(Math.PI / 2 - shareAngles[k]);
        log[i][k] = logOfRho + logPrior[k] + likelihood.logNumerator(p, oneMinusP, rho);
      }
    }
    return log;
  }

  /** Narrows the whole square step by step to what matters. */
  Window window() {
    Window window = new Window(0, Math.PI / 2, 0, Math.PI / 2);
    while (true) {
      Window narrower = narrowed(window);
      if (narrower.area() > 0.6 * window.area()) {
        return narrower;
      }
      window = narrower;
    }
  }

  private Window narrowed(Window window) {
    double shareStep = (window.shareHigh - window.shareLow) / SCAN_POINTS;
    double likenessStep = (window.likenessHigh - window.likenessLow) / SCAN_POINTS;
    double[][] log =
        logOn(middles(window.shareLow, shareStep), middles(window.likenessLow, likenessStep));
    double peak = Arrays.stream(log).flatMapToDouble(Arrays::stream).max().orElseThrow();
    int left = SCAN_POINTS;
    int right = -1;
    int bottom = SCAN_POINTS;
    int top = -1;
    for (int i = 0; i < SCAN_POINTS; i++) {
      for (int k = 0; k < SCAN_POINTS; k++) {
        if (log[i][k] > peak - NEGLIGIBLE) {
          left = Math.min(left, k);
          right = Math.max(right, k);
          bottom = Math.min(bottom, i);
          top = i;
        }
      }
    }
    return new Window(
        window.shareLow + Math.max(0, left - 1) * shareStep,
        window.shareLow + Math.min(SCAN_POINTS, right + 2) * shareStep,
        window.likenessLow + Math.max(0, bottom - 1) * likenessStep,
        window.likenessLow + Math.min(SCAN_POINTS, top + 2) * likenessStep);
  }

  private static double[] middles(double low, double step) {
    double[] middles = new double[SCAN_POINTS];
    for (int i = 0; i < SCAN_POINTS; i++) {
      middles[i] = low + (i + 0.5) * step;
    }
    return middles;
  }
}
