/**
 * Trialwood: the working record and the decision desk of a nursery that breeds woody ornamentals.
 */
@NullMarked
package trialwood;

import org.jspecify.annotations.NullMarked;
