/** The places where plants stand. */
@ApplicationModule(allowedDependencies = {"record"})
@NullMarked
package trialwood.site;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
