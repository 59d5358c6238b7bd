/** Populations and the tags hung in them. */
@NullMarked
package trialwood.field.web;

import org.jspecify.annotations.NullMarked;
