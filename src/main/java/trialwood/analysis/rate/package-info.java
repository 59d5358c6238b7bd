/**
 * Proportions: shares of cuttings that root, live or sell. Plain counts have exact and score limits
 * and 2 × 2 comparisons; trays, which differ more than chance, have the quasi-binomial and the
 * beta-binomial model; a rooting trial has its size. Every proportion is a fraction of 1.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.rate;
