package trialwood.analysis.rate;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import trialwood.analysis.Answer;

/**
 * How uneven the trays of one batch are, against trays that differ by chance alone.
 *
 * <p>Pearson's X² = Σ (xᵢ − nᵢp̂)² / (nᵢp̂(1 − p̂)) with p̂ = Σx/Σn, on k − 1 degrees of freedom
 * for k trays; φ = X²/(k − 1), about 1 where the trays are as even as chance, well above 1 where
 * one part of the bench did otherwise. The p value is Pr(χ² ≥ X²) if all trays had one true
 * proportion.
 *
 * <p>Source: McCullagh, P. and Nelder, J. A. (1989) Generalized Linear Models, 2nd ed. Chapman and
 * Hall, sections 4.4–4.5
 *
 * @param pooledShare p̂
 * @param chiSquare X²
 * @param degreesOfFreedom k − 1
 * @param phi X² ÷ degrees of freedom
 * @param pValue of equal proportions
 */
public record TrayDispersion(
    double pooledShare, double chiSquare, int degreesOfFreedom, double phi, double pValue) {

  /** Lacking for a single tray, and where all or none rooted: then nothing can differ. */
  public static Answer<TrayDispersion> of(List<TrayCount> trays) {
    if (trays.size() < 2) {
      return Answer.lacking("The spread between trays needs at least two trays.");
    }
    int stuck = trays.stream().mapToInt(TrayCount::stuck).sum();
    int rooted = trays.stream().mapToInt(TrayCount::rooted).sum();
    if (rooted == 0 || rooted == stuck) {
      return Answer.lacking("All trays gave the same: there is no spread to measure.");
    }
    double share = (double) rooted / stuck;
    double chiSquare =
        trays.stream()
            .mapToDouble(
                tray ->
                    Math.pow(tray.rooted() - tray.stuck() * share, 2)
                        / (tray.stuck() * share * (1 - share)))
            .sum();
    int df = trays.size() - 1;
    double p = ChiSquaredDistribution.of(df).survivalProbability(chiSquare);
    return Answer.known(new TrayDispersion(share, chiSquare, df, chiSquare / df, p));
  }
}
