/**
 * Policies as data, what people attest, what the records say of each criterion, and what was
 * decided. Knows no stage: it asks whoever supplies evidence.
 */
@ApplicationModule(
    allowedDependencies = {
      "record",
      "analysis",
      "crop",
      "people",
      "lineage",
      "candidate",
      "evidence",
      "web"
    })
@NullMarked
package trialwood.gate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
