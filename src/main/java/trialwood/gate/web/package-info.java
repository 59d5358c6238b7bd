/** The pages of gate day: lists, the sheet of one gate, decisions, minutes, attestations. */
@NullMarked
package trialwood.gate.web;

import org.jspecify.annotations.NullMarked;
