/** What tests of several packages share: the test configurations and the second database. */
@NullMarked
package trialwood.testing;

import org.jspecify.annotations.NullMarked;
