/**
 * How steady an entry is from one environment to the next: its slope on the environments, its share
 * of the interaction, its distance from the best, and the axes of the interaction.
 *
 * <p>Every method starts from a complete {@link trialwood.analysis.TwoWayTable} of cell means, one
 * row an entry, one column an environment.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.stability;
