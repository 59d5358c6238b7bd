/**
 * Arithmetic at hand for bench and yard: hormone solutions, cuttings and seed to start with, trays,
 * medium, room for pots. Every number is exact but for the last bits of floating point; whoever
 * shows one rounds it.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.bench;
