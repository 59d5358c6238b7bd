/**
 * Notes on anything, with photographs: on a unit, an accession, a run, a site, a house. Other
 * packages need only lead to {@code /notes/KIND/CODE}.
 */
@ApplicationModule(allowedDependencies = {"record", "people", "evidence", "web"})
@NullMarked
package trialwood.note;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
