package trialwood.analysis.means;

import java.util.Arrays;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;

/**
 * Measurements of one trait on single plants of one lot.
 *
 * @param n plants measured
 * @param mean Σx/n, in the unit of the trait
 * @param sd √(Σ(x − mean)²/(n − 1)), same unit; lacking for a single plant
 * @param cv sd ÷ mean, a fraction: the evenness of the lot; lacking for a single plant or a mean
 *     that is not positive
 */
public record PlantSample(int n, double mean, Answer<Double> sd, Answer<Double> cv) {

  /**
   * @throws IllegalArgumentException if there is no value or one is not a finite number
   */
  public static PlantSample of(double... values) {
    Refuse.unless(values.length > 0, "No plant has been measured.");
    for (double value : values) {
      Refuse.unlessFinite(value, "measurement");
    }
    int n = values.length;
    double mean = Arrays.stream(values).sum() / n;
    if (n == 1) {
      Answer<Double> lacking = Answer.lacking("The spread needs at least two plants.");
      return new PlantSample(n, mean, lacking, lacking);
    }
    double squares = Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    double sd = Math.sqrt(squares / (n - 1));
    return new PlantSample(
        n,
        mean,
        Answer.known(sd),
        mean > 0
            ? Answer.known(sd / mean)
            : Answer.lacking("The coefficient of variation needs a mean above 0."));
  }

  /** The sample of a list of values; see {@link #of(double...)}. */
  public static PlantSample of(List<Double> values) {
    return of(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** What the sample says of the lot's true mean: standard error sd/√n, n − 1 df. */
  public Answer<StudentBelief> beliefOfMean() {
    return sd instanceof Answer.Known<Double> known
        ? Answer.known(new StudentBelief(mean, known.answer() / Math.sqrt(n), n - 1))
        : Answer.lacking("An interval of the mean needs at least two plants.");
  }
}
