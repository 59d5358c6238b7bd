/** Pages of the houses, and the line on every page that says which of them are closed to people. */
@NullMarked
package trialwood.house.web;

import org.jspecify.annotations.NullMarked;
