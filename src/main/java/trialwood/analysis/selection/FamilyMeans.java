package trialwood.analysis.selection;

import java.util.Collection;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * Family means shrunk towards the mean of all families: the fewer plants a family has and the less
 * families differ, the less its own mean is trusted. The variances are those that make
 *
 * <pre>−2 log REML = (N − 1) log σ² + Σ log(1 + nᵢλ) + log Σwᵢ + N − 1 + (N − 1) log 2π,
 * wᵢ = nᵢ/(1 + nᵢλ),  μ = Σwᵢȳᵢ/Σwᵢ,  σ² = (squares within + Σwᵢ(ȳᵢ − μ)²)/(N − 1)</pre>
 *
 * least, λ = σ²_f/σ²; λ is 0 where families differ no more than chance alone would have it.
 *
 * <p>Sources: Patterson, H. D. and Thompson, R. (1971) Recovery of inter-block information when
 * block sizes are unequal. Biometrika 58, 545–554; Henderson, C. R. (1975) Best linear unbiased
 * estimation and prediction under a selection model. Biometrics 31, 423–447
 *
 * @param mean μ, each family weighed by wᵢ
 * @param varianceOfFamilies σ²_f, 0 or above
 * @param varianceWithin σ², above 0
 * @param minusTwoLogLikelihood the criterion at its least
 * @param families one line each, in the order given
 */
public record FamilyMeans(
    double mean,
    double varianceOfFamilies,
    double varianceWithin,
    double minusTwoLogLikelihood,
    List<ShrunkMean> families) {

  /**
   * One family.
   *
   * @param sample its plants
   * @param effect what it is believed to be worth above the mean of all families
   * @param weight n σ²_f/(n σ²_f + σ²): how much of its own deviation is believed
   * @param reliability 1 − Var(effect believed − true effect)/σ²_f, the unknown mean included; 0
   *     where families do not differ
   */
  public record ShrunkMean(FamilySample sample, double effect, double weight, double reliability) {}

  public FamilyMeans {
    families = List.copyOf(families);
  }

  /** Lacking with one family, with no family of two plants, or where plants of one never differ. */
  public static Answer<FamilyMeans> of(Collection<FamilySample> families) {
    String lack = FamilySample.lack(families);
    if (!lack.isEmpty()) {
      return Answer.lacking(lack);
    }
    var profile = new FamilyProfile(List.copyOf(families));
    double ratio = profile.bestRatio();
    double within = profile.varianceWithin(ratio);
    double between = ratio * within;
    double mean = profile.mean(ratio);
    double errorOfMean = within / profile.totalWeight(ratio);
    List<ShrunkMean> shrunk =
        families.stream()
            .map(
                family -> {
                  double weight = family.plants() * ratio / (1 + family.plants() * ratio);
                  double reliability =
                      between == 0 ? 0 : weight - weight * weight * errorOfMean / between;
                  return new ShrunkMean(
                      family, weight * (family.mean() - mean), weight, reliability);
                })
            .toList();
    return Answer.known(
        new FamilyMeans(mean, between, within, profile.minusTwoLogLikelihood(ratio), shrunk));
  }

  /** What the family's mean is believed to be: between its own mean and that of all families. */
  public double believed(ShrunkMean family) {
    return mean + family.effect();
  }

  /** A multiple of the likeness of plants of one family, see {@link FamilyVariance}. */
  public double heritability(double multiple) {
    Refuse.unless(multiple >= 1, "The multiple of the likeness is at least 1, not %s.", multiple);
    return multiple * varianceOfFamilies / (varianceOfFamilies + varianceWithin);
  }

  /**
   * @throws IllegalArgumentException if no family has that name
   */
  public ShrunkMean of(String family) {
    return families.stream()
        .filter(own -> own.sample().family().equals(family))
        .findFirst()
        .orElseThrow(() -> Refuse.because("There is no family %s.", family));
  }
}
