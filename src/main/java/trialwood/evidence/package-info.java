/**
 * What a metric is, and the three interfaces by which a stage supplies evidence, life-line entries
 * and due work.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "analysis", "lineage"})
@NullMarked
package trialwood.evidence;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
