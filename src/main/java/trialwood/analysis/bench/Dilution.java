package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/**
 * A stock solution thinned with water: C1 × V1 = C2 × V2.
 *
 * @param stockMl millilitres of the stock
 * @param waterMl millilitres of water to make it up
 */
public record Dilution(double stockMl, double waterMl) {

  private static final double ML_PER_LITRE = 1_000;

  /**
   * @param litres of the thinned solution, above 0
   * @throws IllegalArgumentException when the stock is weaker than what is wanted
   */
  public static Dilution of(Strength stock, Strength wanted, double litres) {
    Refuse.unless(litres > 0, "The volume must be above 0.");
    Refuse.unless(
        wanted.ppm() <= stock.ppm(),
        "Water only thins: what is wanted is stronger than the stock.");
    double total = litres * ML_PER_LITRE;
    double stockMl = total * wanted.ppm() / stock.ppm();
    return new Dilution(stockMl, total - stockMl);
  }
}
