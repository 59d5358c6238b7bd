package trialwood.analysis.time;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import trialwood.analysis.Answer;

/**
 * Weights p ≥ 0, Σp = 1, that maximise Σᵢ wᵢ log Σⱼ cᵢⱼpⱼ, where cᵢⱼ says whether observation i
 * covers place j. Each round makes one step of expectation–maximisation and one constrained Newton
 * step: the quadratic approximation is minimised over p ≥ 0 (non-negative least squares) and the
 * line to its minimum searched. It ends where the Kuhn–Tucker conditions hold: Dⱼ = Σᵢ wᵢcᵢⱼ/(Cp)ᵢ
 * ÷ Σw is at most 1 everywhere.
 *
 * <p>Source: Dempster, A. P., Laird, N. M. and Rubin, D. B. (1977) Journal of the Royal Statistical
 * Society B 39, 1–38; Wang, Y. (2008) Dimension-reduced nonparametric maximum likelihood
 * computation for interval-censored data. Computational Statistics and Data Analysis 52, 2388–2402
 */
final class MixtureWeights {

  private static final int ROUNDS = 2000;
  private static final double MET = 1e-12;
  private static final double GOOD_ENOUGH = 1e-10;

  /**
   * @param shortfall the largest Dⱼ less 1
   */
  record Best(double[] weights, double logLikelihood, double shortfall) {}

  private final double[] counts;
  private final boolean[][] covers;
  private final double total;
  private final int places;

  MixtureWeights(double[] counts, boolean[][] covers) {
    this.counts = counts;
    this.covers = covers;
    this.total = Arrays.stream(counts).sum();
    this.places = covers[0].length;
  }

  Answer<Best> best() {
    double[] p = new double[places];
    Arrays.fill(p, 1.0 / places);
    double shortfall = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      double[] d = gradient(p);
      shortfall = Arrays.stream(d).max().orElseThrow() - 1;
      if (shortfall <= MET) {
        break;
      }
      for (int j = 0; j < places; j++) {
        p[j] *= d[j];
      }
      p = searched(p, newton(p));
    }
    return shortfall <= GOOD_ENOUGH
        ? Answer.known(new Best(p, logLikelihood(p), shortfall))
        : Answer.lacking("The weights did not settle.");
  }

  private double[] fitted(double[] p) {
    double[] fitted = new double[counts.length];
    for (int i = 0; i < fitted.length; i++) {
      for (int j = 0; j < places; j++) {
        fitted[i] += covers[i][j] ? p[j] : 0;
      }
    }
    return fitted;
  }

  private double logLikelihood(double[] p) {
    double[] fitted = fitted(p);
    double sum = 0;
    for (int i = 0; i < fitted.length; i++) {
      sum += counts[i] * Math.log(fitted[i]);
    }
    return sum;
  }

  private double[] gradient(double[] p) {
    double[] fitted = fitted(p);
    double[] gradient = new double[places];
    for (int i = 0; i < fitted.length; i++) {
      for (int j = 0; j < places; j++) {
        gradient[j] += covers[i][j] ? counts[i] / fitted[i] / total : 0;
      }
    }
    return gradient;
  }

  /**
   * The maximum over q ≥ 0 of the quadratic approximation at p to Σᵢ wᵢ log (Cq)ᵢ ÷ Σw − Σq, whose
   * own maximum adds up to 1; scaled to do so exactly.
   */
  private double[] newton(double[] p) {
    double[] fitted = fitted(p);
    var normal = new DMatrixRMaj(places, places);
    double[] right = new double[places];
    Arrays.fill(right, -1);
    for (int i = 0; i < fitted.length; i++) {
      double weight = counts[i] / total / fitted[i];
      for (int j = 0; j < places; j++) {
        if (covers[i][j]) {
          right[j] += 2 * weight;
          for (int k = 0; k < places; k++) {
            normal.add(j, k, covers[i][k] ? weight / fitted[i] : 0);
          }
        }
      }
    }
    double[] q = new NonNegative(normal, right).from(p);
    double sum = Arrays.stream(q).sum();
    return sum > 0 ? Arrays.stream(q).map(x -> x / sum).toArray() : p;
  }

  /** The best of p, the wanted weights, and points between them by halving. */
  private double[] searched(double[] p, double[] wanted) {
    double here = logLikelihood(p);
    double step = 1;
    for (int half = 0; half < 40; half++) {
      double[] there = new double[places];
      for (int j = 0; j < places; j++) {
        there[j] = p[j] + step * (wanted[j] - p[j]);
      }
      if (logLikelihood(there) > here) {
        return there;
      }
      step /= 2;
    }
    return p;
  }
}
