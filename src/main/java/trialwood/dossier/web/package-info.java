/** The pages and the printed form of the dossiers. */
@NullMarked
package trialwood.dossier.web;

import org.jspecify.annotations.NullMarked;
