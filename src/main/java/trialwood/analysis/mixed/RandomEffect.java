package trialwood.analysis.mixed;

/**
 * The shrunken effect of one level of a random term, a best linear unbiased prediction.
 *
 * @param level its label
 * @param effect in units of the values, about 0
 * @param errorVariance of effect less truth, the fixed effects being estimated
 * @param conditionalVariance the same with the fixed effects taken as known
 * @param reliability 1 − error variance ÷ variance of the term; 0 where that variance is 0
 */
public record RandomEffect(
    String level,
    double effect,
    double errorVariance,
    double conditionalVariance,
    double reliability) {

  public double se() {
    return Math.sqrt(errorVariance);
  }
}
