package trialwood.analysis.mixed;

/**
 * The variance of a random term.
 *
 * @param term its name; {@code Residual} for the residual
 * @param variance in squared units of the values; exactly 0 where the likelihood is best there
 * @param levels how many levels it was estimated from; for the residual the number of values
 */
public record VarianceComponent(String term, double variance, int levels) {}
