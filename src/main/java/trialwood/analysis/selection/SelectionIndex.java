package trialwood.analysis.selection;

/**
 * An index of several traits, b, made to follow the total worth a of the breeding values (Smith
 * 1936, Hazel 1943; see {@link IndexTraits#forWorth}).
 */
public final class SelectionIndex {

  private final IndexTraits traits;
  private final double[] weights;
  private final double[] worth;

  SelectionIndex(IndexTraits traits, double[] weights, double[] worth) {
    this.traits = traits;
    this.weights = weights.clone();
    this.worth = worth.clone();
  }

  /** b, one a trait. */
  public double[] weights() {
    return weights.clone();
  }

  /** Standard deviation of the index, √(b′Pb). */
  public double spread() {
    return Math.sqrt(traits.phenotypicVariance(weights));
  }

  /** Standard deviation of total worth, √(a′Ga). */
  public double spreadOfWorth() {
    return Math.sqrt(traits.geneticVariance(worth));
  }

  /** Correlation of index and total worth, 0 to 1; 0 where nothing of worth is inherited. */
  public double accuracy() {
    return spreadOfWorth() > 0 ? spread() / spreadOfWorth() : 0;
  }

  /** Gain in total worth when the index is selected at the intensity. */
  public double response(double intensity) {
    return intensity * spread();
  }

  /** Gain in each trait, i Gb/√(b′Pb); 0 for an index without spread. */
  public double[] traitResponses(double intensity) {
    double[] responses = traits.withIndex(weights);
    for (int j = 0; j < responses.length; j++) {
      responses[j] = spread() > 0 ? intensity * responses[j] / spread() : 0;
    }
    return responses;
  }
}
