/** Planted populations, and the tags hung in them that make candidates. */
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
package trialwood.field;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
