/** The pages of the stock plants. */
@NullMarked
package trialwood.stock.web;

import org.jspecify.annotations.NullMarked;
