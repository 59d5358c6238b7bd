package trialwood.analysis.mixed;

/**
 * A fixed effect as a difference from the first level of its factor.
 *
 * @param factor its name; empty for the value at the first level of every factor
 * @param level its level; empty with an empty factor
 * @param estimate in units of the values
 * @param se its standard error, variances taken as known
 */
public record FixedEffect(String factor, String level, double estimate, double se) {}
