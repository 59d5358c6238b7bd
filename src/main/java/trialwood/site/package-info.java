/** The places where plants stand: sites, and the benches of the houses. */
@ApplicationModule(allowedDependencies = {"record"})
@NullMarked
package trialwood.site;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
