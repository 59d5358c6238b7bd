/**
 * The sheets, one class each: columns, what is done with a row, and the query behind the export.
 */
@NullMarked
package trialwood.exchange.sheet;

import org.jspecify.annotations.NullMarked;
