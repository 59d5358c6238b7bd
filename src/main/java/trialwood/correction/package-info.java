/**
 * Labels that stood for another plant than they said: whose records move when that is put right,
 * which decisions read them, and the history of every label. No record is changed by it.
 */
@ApplicationModule(
    allowedDependencies = {"record", "people", "lineage", "unit", "candidate", "gate", "web"})
@NullMarked
package trialwood.correction;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
