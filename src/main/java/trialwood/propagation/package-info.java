/** Sticking runs, batches and trays, from the cutting to the liner off the mist. */
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
package trialwood.propagation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
