/** Pages that look at everything: Today, Find, candidates. Stands on top; nobody sees it. */
@ApplicationModule
@NullMarked
package trialwood.desk;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
