/**
 * Trials: entries beside checks in randomised blocks at several sites, what was seen on their
 * plots, what events took out, and what the means say against a check.
 */
@ApplicationModule(
    allowedDependencies = {
      "record",
      "crop",
      "site",
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
package trialwood.trial;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
