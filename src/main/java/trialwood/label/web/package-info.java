/** The pages on which labels, their formats and the printers are chosen and changed. */
@NullMarked
package trialwood.label.web;

import org.jspecify.annotations.NullMarked;
