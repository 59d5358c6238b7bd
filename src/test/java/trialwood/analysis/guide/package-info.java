/**
 * The examples of docs/methods.md, computed again.
 *
 * <p>One test class a chapter or two; each sentence with a number must stand in the guide as the
 * code computes it.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.guide;
