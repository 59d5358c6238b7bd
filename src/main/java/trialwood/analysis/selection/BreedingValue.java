package trialwood.analysis.selection;

import trialwood.analysis.Answer;

/**
 * What a plant is believed to pass on.
 *
 * @param plant its name
 * @param value in the unit of the trait, above the base of the pedigree
 * @param inbreeding F of the plant
 * @param additiveVariance σ²_A of plants not inbred
 * @param errorVariance of the value about the true one; lacking for a large pedigree
 */
public record BreedingValue(
    String plant,
    double value,
    double inbreeding,
    double additiveVariance,
    Answer<Double> errorVariance) {

  /** 1 − error variance ÷ variance of such plants, (1 + F)σ²_A. */
  public Answer<Double> reliability() {
    return errorVariance.map(error -> 1 - error / ((1 + inbreeding) * additiveVariance));
  }
}
