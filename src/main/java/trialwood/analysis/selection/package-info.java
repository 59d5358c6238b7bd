/**
 * What selection can gain: intensities and expected response, families and their rates shrunk
 * towards each other, index weights, pedigrees and breeding values.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.selection;
