/**
 * What pages are made of: the frame they share, values as people read and type them, lists that
 * page and sort, the few pictures; who may open which page, and what a person sees when something
 * cannot be done. Nothing here is null unless it says so. Features may use it; it uses no feature.
 */
@ApplicationModule(allowedDependencies = {"record", "people"})
@NullMarked
package trialwood.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
