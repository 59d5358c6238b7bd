/**
 * The arithmetic against the world outside: every row of the reference files, computed again.
 *
 * <p>The files hold values computed in R and by independent quadrature, on open data sets; each
 * names its source in its first lines and carries its own tolerances. {@link
 * trialwood.analysis.reference.ReferenceTest} reads them, one {@link
 * trialwood.analysis.reference.Family} a file or two says how each method is called.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.reference;
