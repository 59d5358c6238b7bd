/**
 * Persons, whose initials stand on records; accounts, which sign in; and the role of each account.
 */
@ApplicationModule(allowedDependencies = {"record"})
@NullMarked
package trialwood.people;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
