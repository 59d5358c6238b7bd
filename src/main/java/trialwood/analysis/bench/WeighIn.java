package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/**
 * How much of a dry product goes into water: grams = ppm × litres ÷ 1,000, divided by the product's
 * share of active substance.
 *
 * @param pureGrams of active substance
 * @param productGrams of the product that holds it
 */
public record WeighIn(double pureGrams, double productGrams) {

  private static final double MG_PER_GRAM = 1_000;

  /**
   * @param litres of solution, above 0
   * @param purity share of active substance in the product, above 0, at most 1
   */
  public static WeighIn of(Strength wanted, double litres, double purity) {
    Refuse.unless(litres > 0, "The volume must be above 0.");
    Refuse.unless(purity > 0 && purity <= 1, "A purity lies above 0 and up to 100 %%.");
    double pure = wanted.ppm() * litres / MG_PER_GRAM;
    return new WeighIn(pure, pure / purity);
  }
}
