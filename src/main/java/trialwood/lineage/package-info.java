/**
 * Accessions: anything with a code that can be propagated or used as a parent, and where it comes
 * from.
 */
@ApplicationModule(allowedDependencies = {"record", "crop"})
@NullMarked
package trialwood.lineage;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
