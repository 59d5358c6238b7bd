/**
 * Stock plants: the plants kept for cuttings, where each stands, what it was tested for, and
 * whether one accident could take them all.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "lineage", "unit", "web"})
@NullMarked
package trialwood.stock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
