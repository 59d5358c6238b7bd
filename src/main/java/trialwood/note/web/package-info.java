/** Pages of notes and photographs. */
@NullMarked
package trialwood.note.web;

import org.jspecify.annotations.NullMarked;
