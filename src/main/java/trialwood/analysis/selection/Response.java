package trialwood.analysis.selection;

import trialwood.analysis.Refuse;

/**
 * The breeder's equation: what selecting plants gains in their offspring,
 *
 * <pre>S = i σ_P,  R = h² S = i h σ_A</pre>
 *
 * <p>Source: Lush, J. L. (1937) Animal Breeding Plans, Iowa State College Press; Falconer, D. S.
 * and Mackay, T. F. C. (1996) Introduction to Quantitative Genetics, 4th ed., chapter 11
 *
 * @param intensity i, in phenotypic standard deviations
 * @param heritability h², 0 to 1
 * @param spread σ_P, phenotypic standard deviation, 0 or above
 */
public record Response(double intensity, double heritability, double spread) {

  public Response {
    Refuse.unlessFinite(intensity, "selection intensity");
    Refuse.unless(
        heritability >= 0 && heritability <= 1,
        "A heritability lies between 0 and 1, not at %s.",
        heritability);
    Refuse.unless(
        spread >= 0 && Double.isFinite(spread), "A spread is 0 or above, not %s.", spread);
  }

  /** The response to keeping a share of very many plants. */
  public static Response keeping(double share, double heritability, double spread) {
    return new Response(Truncation.keeping(share).intensity(), heritability, spread);
  }

  /** S: how far the mean of those kept lies above the mean of all. */
  public double differential() {
    return intensity * spread;
  }

  /** R: how far the mean of their offspring is expected to. */
  public double response() {
    return heritability * differential();
  }

  /** σ_A, the additive genetic standard deviation. */
  public double additiveSpread() {
    return Math.sqrt(heritability) * spread;
  }

  /** h, how closely the plant's own value follows its breeding value. */
  public double accuracy() {
    return Math.sqrt(heritability);
  }
}
