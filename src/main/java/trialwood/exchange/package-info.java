/**
 * Tables in and out: every sheet is declared once, as columns with a meaning, the rows it takes and
 * the query that gives them back. Stands on top and may see everything; nobody sees it.
 */
@ApplicationModule
@NullMarked
package trialwood.exchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
