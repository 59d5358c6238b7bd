/** The bench on a phone: runs, trays, looks, final counts, weanings. */
@NullMarked
package trialwood.propagation.web;

import org.jspecify.annotations.NullMarked;
