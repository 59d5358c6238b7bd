/**
 * The arithmetic: numbers in, numbers out.
 *
 * <p>One class a method family. Everything is immutable; results are records, or, where they carry
 * a curve or a matrix, final classes with accessors of the same form. Input that cannot be true
 * (more rooted than stuck, a value that is not a number) is refused with an {@link
 * IllegalArgumentException} and a plain sentence. Too little data is no error: the method answers
 * with an {@link trialwood.analysis.Answer.Lacking} that says what is lacking. Nothing returns NaN.
 *
 * <p>Proportions are fractions of 1, days whole days after sticking. Nothing here knows the rest of
 * the application: the package uses the JDK, Commons Statistics, the gamma functions of Commons
 * Numbers and EJML, and nothing else.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis;
