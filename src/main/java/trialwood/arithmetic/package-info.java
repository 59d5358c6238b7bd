/**
 * Arithmetic at hand: one page a sum, whose address holds what was typed, so that it can be kept
 * and passed on. Nothing is stored.
 */
@ApplicationModule(allowedDependencies = {"record", "lineage", "evidence", "analysis", "web"})
@NullMarked
package trialwood.arithmetic;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
