/**
 * What one plant or plot does over time: growth rates from repeated measures, and the area under
 * the progress of a disease.
 *
 * <p>Times are numbers in any one unit (days, weeks), rates are per that unit.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.growth;
