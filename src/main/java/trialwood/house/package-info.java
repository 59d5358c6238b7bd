/**
 * The houses and their log: what was sprayed and from when one may go in again, how warm and wet
 * they were.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "evidence", "web"})
@NullMarked
package trialwood.house;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
