/** The pages of the trials: what stands where, what the means say, and the sheets to fill. */
@NullMarked
package trialwood.trial.web;

import org.jspecify.annotations.NullMarked;
