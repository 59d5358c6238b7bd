/**
 * Distinctness and uniformity of a candidate beside its reference varieties, by the rules of the
 * plant variety offices, and the difference of two colours.
 *
 * <p>Off-types are counted by {@link trialwood.analysis.rate.Allowance}.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.distinct;
