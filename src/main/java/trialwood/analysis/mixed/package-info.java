/**
 * Mixed models: values that share a site, a block, an entry or a plot.
 *
 * <p>{@link trialwood.analysis.mixed.MixedModel} takes values and factors, fixed and random, and
 * answers with variance components by restricted maximum likelihood, fixed effects, shrunken
 * effects and what their errors are. Any nesting and crossing of random factors goes.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.mixed;
