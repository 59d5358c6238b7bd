/**
 * The ground data: what records and gates take as given. Pages to read crops, traits, container
 * classes, sites, checks, the gate policies and the filing routes, and to change those that people
 * edit by hand.
 */
@ApplicationModule(
    allowedDependencies = {
      "record",
      "crop",
      "site",
      "people",
      "unit",
      "lineage",
      "candidate",
      "evidence",
      "gate",
      "dossier",
      "web"
    })
@NullMarked
package trialwood.ground;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
