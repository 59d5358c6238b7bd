/** The pages on which files come in and go out. */
@NullMarked
package trialwood.exchange.web;

import org.jspecify.annotations.NullMarked;
