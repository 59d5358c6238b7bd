/**
 * What is due when: the work that all stages ask for, put in the order in which people walk, and
 * the calendar that other programs fetch.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "evidence", "web"})
@NullMarked
package trialwood.season;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
