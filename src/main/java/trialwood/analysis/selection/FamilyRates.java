package trialwood.analysis.selection;

import java.util.Collection;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.rate.BetaPrior;

/**
 * Rates of several families, each shrunk towards the mean of all by what the families themselves
 * say of how much families differ (empirical Bayes): true rates are Beta(a, b), with mean m = a/(a
 * + b) and likeness of seedlings of one family ρ = 1/(a + b + 1). The uncertainty of a and b is not
 * in the intervals of the families.
 *
 * @param prior Beta(a, b)
 * @param logLikelihood natural logarithm of the probability of all counts under it, coefficients
 *     included
 * @param families in the order given
 */
public record FamilyRates(BetaPrior prior, double logLikelihood, List<FamilyRate> families) {

  static final String UNLIKE = "Every family is all of one kind: there is no rate to estimate.";

  static final String ALIKE =
      "The families differ no more than chance alone would have it: take them as one.";

  public FamilyRates {
    families = List.copyOf(families);
  }

  /**
   * By moments, k families,
   *
   * <pre>m = Σx/Σn,  ρ = (X² − (k − 1))/(N − Σn²/N − (k − 1)),  X² = Σn(p − m)²/(m(1 − m))</pre>
   *
   * Lacking with one family, where all seedlings agree, or where families do not differ more than
   * chance would have it.
   *
   * <p>Source: Kleinman, J. C. (1973) Proportions with extraneous variance: single and independent
   * samples. Journal of the American Statistical Association 68, 46–54
   */
  public static Answer<FamilyRates> byMoments(Collection<FamilyCount> counts) {
    String lack = lack(counts);
    if (!lack.isEmpty()) {
      return Answer.lacking(lack);
    }
    double seedlings = counts.stream().mapToDouble(FamilyCount::seedlings).sum();
    double mean = counts.stream().mapToDouble(FamilyCount::hits).sum() / seedlings;
    double chiSquare = 0;
    double squaredSizes = 0;
    for (FamilyCount count : counts) {
      double off = count.share() - mean;
      chiSquare += count.seedlings() * off * off / (mean * (1 - mean));
      squaredSizes += (double) count.seedlings() * count.seedlings();
    }
    int df = counts.size() - 1;
    double likeness = (chiSquare - df) / (seedlings - squaredSizes / seedlings - df);
    if (!(likeness > 0)) {
      return Answer.lacking(ALIKE);
    }
    if (likeness >= 1) {
      return Answer.lacking(UNLIKE);
    }
    double weight = (1 - likeness) / likeness;
    return Answer.known(with(new BetaPrior(mean * weight, (1 - mean) * weight), counts));
  }

  /**
   * By maximum likelihood of the beta-binomial counts. Lacking as {@link #byMoments}, or where the
   * likelihood does not settle inside.
   *
   * <p>Source: Griffiths, D. A. (1973) Maximum likelihood estimation for the beta-binomial
   * distribution and an application to the household distribution of the total number of cases of a
   * disease. Biometrics 29, 637–648
   */
  public static Answer<FamilyRates> byLikelihood(Collection<FamilyCount> counts) {
    String lack = lack(counts);
    if (!lack.isEmpty()) {
      return Answer.lacking(lack);
    }
    return new RateLikelihood(List.copyOf(counts)).best().map(prior -> with(prior, counts));
  }

  /** m, the mean of all families. */
  public double mean() {
    return prior.mean();
  }

  /** ρ, the likeness of seedlings of one family. */
  public double likeness() {
    return 1 / (1 + prior.a() + prior.b());
  }

  /**
   * @throws IllegalArgumentException if no family has that name
   */
  public FamilyRate of(String family) {
    return families.stream()
        .filter(own -> own.count().family().equals(family))
        .findFirst()
        .orElseThrow(() -> Refuse.because("There is no family %s.", family));
  }

  private static FamilyRates with(BetaPrior prior, Collection<FamilyCount> counts) {
    return new FamilyRates(
        prior,
        new RateLikelihood(List.copyOf(counts)).logOf(prior),
        counts.stream().map(count -> new FamilyRate(count, prior)).toList());
  }

  private static String lack(Collection<FamilyCount> counts) {
    if (counts.size() < 2) {
      return "How families differ is seen from two of them on.";
    }
    if (counts.stream().allMatch(count -> count.hits() == 0)
        || counts.stream().allMatch(count -> count.hits() == count.seedlings())) {
      return "All seedlings of all families agree: nothing shows how families differ.";
    }
    return counts.stream().allMatch(count -> count.seedlings() == 1)
        ? "No family has two seedlings: nothing shows how alike seedlings of one family are."
        : "";
  }
}
