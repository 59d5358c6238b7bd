package trialwood.analysis.selection;

import java.util.Collection;
import org.apache.commons.statistics.distribution.FDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * Variance between and within families by analysis of variance, S families with nᵢ plants, N in
 * all,
 *
 * <pre>n₀ = (N − Σnᵢ²/N)/(S − 1),  σ²_f = (MS_family − MS_within)/n₀,  t = σ²_f/(σ²_f + σ²_w)
 * se(t)² = 2(N − 1)(1 − t)²(1 + (n₀ − 1)t)²/(n₀²(N − S)(S − 1))</pre>
 *
 * The heritability is a multiple of t: 4 for half sibs (open-pollinated seed of one mother each), 2
 * for full sibs without dominance. It is not cut off at 0 or 1: an estimate beyond them says that
 * the families are too few.
 *
 * <p>Source: Swiger, L. A., Harvey, W. R., Everson, D. O. and Gregory, K. E. (1964) The variance of
 * intraclass correlation involving groups with one observation. Biometrics 20, 818–826
 *
 * @param families S
 * @param plants N
 * @param effectiveSize n₀, plants a family
 * @param meanSquareFamily S − 1 df
 * @param meanSquareWithin N − S df, above 0
 */
public record FamilyVariance(
    int families,
    int plants,
    double effectiveSize,
    double meanSquareFamily,
    double meanSquareWithin) {

  /** The multiple of t for families that share one parent. */
  public static final double HALF_SIBS = 4;

  /** Lacking with one family, with no family of two plants, or where plants of one never differ. */
  public static Answer<FamilyVariance> of(Collection<FamilySample> families) {
    String lack = FamilySample.lack(families);
    if (!lack.isEmpty()) {
      return Answer.lacking(lack);
    }
    int plants = FamilySample.plants(families);
    double mean = families.stream().mapToDouble(own -> own.plants() * own.mean()).sum() / plants;
    double between = 0;
    double squaredSizes = 0;
    for (FamilySample family : families) {
      between += family.plants() * (family.mean() - mean) * (family.mean() - mean);
      squaredSizes += (double) family.plants() * family.plants();
    }
    int df = families.size() - 1;
    return Answer.known(
        new FamilyVariance(
            families.size(),
            plants,
            (plants - squaredSizes / plants) / df,
            between / df,
            FamilySample.within(families) / (plants - families.size())));
  }

  public double f() {
    return meanSquareFamily / meanSquareWithin;
  }

  /** Probability of so large an F if families did not differ. */
  public double pValue() {
    return FDistribution.of(families - 1, plants - families).survivalProbability(f());
  }

  /** σ²_f; below 0 where families differ less than chance alone would have it. */
  public double varianceOfFamilies() {
    return (meanSquareFamily - meanSquareWithin) / effectiveSize;
  }

  /** t, the likeness of plants of one family. */
  public double likeness() {
    return varianceOfFamilies() / (varianceOfFamilies() + meanSquareWithin);
  }

  /** se(t). */
  public double likenessError() {
    double t = likeness();
    double scale = (1 - t) * (1 + (effectiveSize - 1) * t) / effectiveSize;
    return Math.abs(scale)
        * Math.sqrt(2.0 * (plants - 1) / ((double) (plants - families) * (families - 1)));
  }

  /**
   * h² = multiple × t, not cut off.
   *
   * @param multiple {@link #HALF_SIBS} for half sibs
   */
  public double heritability(double multiple) {
    refuseMultiple(multiple);
    return multiple * likeness();
  }

  public double heritabilityError(double multiple) {
    refuseMultiple(multiple);
    return multiple * likenessError();
  }

  private static void refuseMultiple(double multiple) {
    Refuse.unless(multiple >= 1, "The multiple of the likeness is at least 1, not %s.", multiple);
  }
}
