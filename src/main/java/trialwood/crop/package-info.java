/** What may be grown and observed: crops, traits with windows and ranges, container classes. */
@ApplicationModule(allowedDependencies = {"record"})
@NullMarked
package trialwood.crop;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
