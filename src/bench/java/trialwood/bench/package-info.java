/** Benchmarks of the arithmetic; {@code ./mvnw -Pbench verify} runs them all. */
@org.jspecify.annotations.NullMarked
package trialwood.bench;
