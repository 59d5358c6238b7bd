package trialwood.analysis;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * A statistic against the chi-square distribution.
 *
 * @param statistic 0 or above
 * @param degreesOfFreedom at least 1
 * @param pValue Pr(χ² ≥ statistic)
 */
public record ChiSquareTest(double statistic, int degreesOfFreedom, double pValue) {

  /** The test of a statistic; one a rounding error below 0 counts as 0. */
  public static ChiSquareTest of(double statistic, int degreesOfFreedom) {
    Refuse.unlessFinite(statistic, "statistic");
    double found = Math.max(0, statistic);
    double p = ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(found);
    return new ChiSquareTest(found, degreesOfFreedom, p);
  }

  /**
   * Twice the gain in log-likelihood of the larger model.
   *
   * <p>Source: Wilks, S. S. (1938) The large-sample distribution of the likelihood ratio for
   * testing composite hypotheses. Annals of Mathematical Statistics 9, 60–62
   */
  public static ChiSquareTest ofLikelihoods(double larger, double smaller, int degreesOfFreedom) {
    return of(2 * (larger - smaller), degreesOfFreedom);
  }

  /**
   * Half of the p value: for a variance or correlation that cannot be below 0, whose value under
   * the hypothesis is 0, at the edge.
   *
   * <p>Source: Self, S. G. and Liang, K.-Y. (1987) Asymptotic properties of maximum likelihood
   * estimators and likelihood ratio tests under nonstandard conditions. Journal of the American
   * Statistical Association 82, 605–610
   */
  public double pValueAtTheEdge() {
    return pValue / 2;
  }
}
