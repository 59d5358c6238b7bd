/**
 * The office: who belongs to the nursery and who may sign in, from the first administrator on. It
 * stands above people and sites because a cooperator's account names both.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "site", "web"})
@NullMarked
package trialwood.office;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
