/**
 * Trials at several sites over several seasons: entries beside checks.
 *
 * <p>{@link trialwood.analysis.trial.CheckComparison} compares an entry with a named check by site,
 * {@link trialwood.analysis.trial.EntryMeans} adjusts means by least squares, {@link
 * trialwood.analysis.trial.TrialModel} fits the mixed model where the layout carries it.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.trial;
