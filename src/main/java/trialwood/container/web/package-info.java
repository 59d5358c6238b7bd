/** The pages of the container yard. */
@NullMarked
package trialwood.container.web;

import org.jspecify.annotations.NullMarked;
