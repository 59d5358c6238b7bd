/**
 * The release dossier: what the records say of a candidate's origin and of its looks, what was
 * disclosed, the novelty clocks that disclosures start, and what has been filed.
 */
@ApplicationModule(
    allowedDependencies = {
      "record",
      "crop",
      "people",
      "lineage",
      "unit",
      "observation",
      "candidate",
      "evidence",
      "analysis",
      "web"
    })
@NullMarked
package trialwood.dossier;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
