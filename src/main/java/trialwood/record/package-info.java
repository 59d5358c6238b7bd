/**
 * What every record carries: who, when, which form, what it supersedes, and how an impossible one
 * is refused. Stands on the ground; every other package may use it.
 */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package trialwood.record;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
