/**
 * Labels for trays, lots, plants and whatever else bears one: what stands on them, how they lie on
 * their paper to a tenth of a millimetre, and what a printer does to the page.
 */
@ApplicationModule(allowedDependencies = {"record", "unit", "web"})
@NullMarked
package trialwood.label;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
