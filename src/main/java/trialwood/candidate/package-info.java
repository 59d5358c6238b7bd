/** The candidate: an accession on its way, its stage, standing, ortet and identity. */
@ApplicationModule(allowedDependencies = {"record", "lineage"})
@NullMarked
package trialwood.candidate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
