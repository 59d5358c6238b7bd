package trialwood.analysis.trial;

import trialwood.analysis.StudentBelief;

/**
 * One entry's mean as if it had stood in every site-season.
 *
 * @param entry candidate or check
 * @param cells site-season means it is computed from
 * @param mean adjusted mean with its standard error and the residual degrees of freedom
 */
public record AdjustedMean(String entry, int cells, StudentBelief mean) {}
