/** The page on which an account makes its calendar address, and the calendar itself. */
@NullMarked
package trialwood.season.web;

import org.jspecify.annotations.NullMarked;
