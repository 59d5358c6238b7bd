/**
 * Lots of potted plants: where they came from, what was lost or left, what stands there today, and
 * the plants with a number of their own.
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
package trialwood.container;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
