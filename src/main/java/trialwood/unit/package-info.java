/**
 * Physical things that records hang on, and the ties that say whose plant each one is, from when
 * until when.
 */
@ApplicationModule(allowedDependencies = {"record", "lineage"})
@NullMarked
package trialwood.unit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
