/**
 * From a few stock plants to a stock: how many there will be after some cycles of cuttings, and how
 * many cuttings it takes.
 *
 * <p>With known rates the distribution is computed exactly; simulation, with a fixed seed and its
 * error shown, enters only where the rates themselves are uncertain.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.buildup;
