/**
 * Means of entries in blocks and their comparisons: least squares on factors, adjusted means,
 * differences with limits for one or for all of them, and whether the spreads are equal.
 *
 * <p>Start at {@link trialwood.analysis.means.PlotValues} and {@link
 * trialwood.analysis.means.LinearModel}; {@link trialwood.analysis.means.Groups} is for plain
 * groups. Plain Java over {@code trialwood.analysis}; nothing of the application.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.means;
