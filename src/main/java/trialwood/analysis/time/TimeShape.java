package trialwood.analysis.time;

import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Quantile;

/**
 * The shape of the days to root: log T = location + scale × z, where z has one of three standard
 * laws.
 *
 * <p>Source: Kalbfleisch, J. D. and Prentice, R. L. (2002) The Statistical Analysis of Failure Time
 * Data, 2nd ed. Wiley, section 2.2
 */
public enum TimeShape {
  /** z is standard normal. */
  LOG_NORMAL {
    @Override
    double below(double z) {
      return NORMAL.cumulativeProbability(z);
    }

    @Override
    double above(double z) {
      return NORMAL.survivalProbability(z);
    }

    @Override
    double density(double z) {
      return NORMAL.density(z);
    }

    @Override
    double slope(double z) {
      return -z * NORMAL.density(z);
    }

    @Override
    double quantile(double p) {
      return Quantile.of(NORMAL, p);
    }
  },

  /** z is the smallest extreme value: Pr(Z &gt; z) = exp(−eᶻ); the Weibull's shape is 1/scale. */
  WEIBULL {
    @Override
    double below(double z) {
      return -Math.expm1(-Math.exp(z));
    }

    @Override
    double above(double z) {
      return Math.exp(-Math.exp(z));
    }

    @Override
    double density(double z) {
      return Math.exp(z - Math.exp(z));
    }

    @Override
    double slope(double z) {
      double density = density(z);
      return density == 0 ? 0 : density * (1 - Math.exp(z));
    }

    @Override
    double quantile(double p) {
      return Math.log(-Math.log1p(-p));
    }
  },

  /** z is standard logistic. */
  LOG_LOGISTIC {
    @Override
    double below(double z) {
      return 1 / (1 + Math.exp(-z));
    }

    @Override
    double above(double z) {
      return 1 / (1 + Math.exp(z));
    }

    @Override
    double density(double z) {
      return below(z) * above(z);
    }

    @Override
    double slope(double z) {
      return density(z) * (above(z) - below(z));
    }

    @Override
    double quantile(double p) {
      return Math.log(p) - Math.log1p(-p);
    }
  };

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Pr(Z ≤ z). */
  abstract double below(double z);

  /** Pr(Z &gt; z), to full relative precision. */
  abstract double above(double z);

  abstract double density(double z);

  /** The density's derivative. */
  abstract double slope(double z);

  /** The z below which a share p lies, 0 &lt; p &lt; 1. */
  abstract double quantile(double p);
}
