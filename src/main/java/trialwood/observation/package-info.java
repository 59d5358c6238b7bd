/** One trait value on one unit, or the reason why there is none. */
@ApplicationModule(allowedDependencies = {"record", "crop", "unit"})
@NullMarked
package trialwood.observation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
