package trialwood.analysis.mixed;

import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * How much of the differences between shrunken means is the entries' own.
 *
 * <pre>cullis = 1 − v̄ / (2 σ²)        v̄: mean over pairs of the error variance of a difference
 * </pre>
 *
 * <p>Source: Cullis, B. R., Smith, A. B. and Coombes, N. E. (2006) On the design of early
 * generation variety trials with correlated data. Journal of Agricultural, Biological, and
 * Environmental Statistics 11, 381–393
 *
 * @param variance σ² of the entries
 * @param meanDifferenceVariance v̄
 * @param cullis the heritability of differences
 * @param meanReliability mean over the entries of 1 − error variance ÷ σ²
 */
public record Heritability(
    double variance, double meanDifferenceVariance, double cullis, double meanReliability) {

  /** Lacking where the variance of the entries is 0, so that nothing is theirs. */
  public static Answer<Heritability> of(MixedFit fit, String entries) {
    double variance = fit.variance(entries);
    if (variance == 0) {
      return Answer.lacking("The records show no variance between levels of " + entries + ".");
    }
    DMatrixRMaj errors = fit.errorCovariance(entries);
    int levels = errors.numRows;
    double trace = CommonOps_DDRM.trace(errors);
    double apart = 2 * (trace - CommonOps_DDRM.elementSum(errors) / levels) / (levels - 1);
    return Answer.known(
        new Heritability(
            variance, apart, 1 - apart / (2 * variance), 1 - trace / levels / variance));
  }

  /**
   * Variance of an entry's mean: its own variance and each other one over the number of places,
   * seasons or plots it is averaged over.
   *
   * @param divisors by term, {@code Residual} for the residual
   * @throws IllegalArgumentException if a divisor is not above 0 or a term is not in the model
   */
  public static double varianceOfMean(MixedFit fit, String entries, Map<String, Double> divisors) {
    double sum = fit.variance(entries);
    for (var divisor : divisors.entrySet()) {
      Refuse.unless(divisor.getValue() > 0, "A mean is over more than 0 of %s.", divisor.getKey());
      sum += fit.variance(divisor.getKey()) / divisor.getValue();
    }
    return sum;
  }

  /**
   * Heritability with entries fixed: σ² / (σ² + half the mean variance of a difference of adjusted
   * means).
   *
   * <p>Source: Piepho, H.-P. and Möhring, J. (2007) Computing heritability and selection response
   * from unbalanced plant breeding trials. Genetics 177, 1881–1888
   */
  public static double ofMeans(double variance, AdjustedMeans means) {
    return variance / (variance + means.meanDifferenceVariance() / 2);
  }
}
