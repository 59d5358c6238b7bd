package trialwood.analysis.selection;

import java.util.BitSet;

/** Walks from a plant to all its ancestors, the youngest first. Not for two threads at once. */
final class Ancestors {

  private final int[] mothers;
  private final int[] fathers;
  private final double[] ownVariance;
  private final double[] genes;
  private final BitSet pending;

  Ancestors(int[] mothers, int[] fathers, double[] ownVariance) {
    this.mothers = mothers;
    this.fathers = fathers;
    this.ownVariance = ownVariance;
    this.genes = new double[mothers.length];
    this.pending = new BitSet(mothers.length);
  }

  /** a_ii = Σ l²_ij d_j, with l_ij the share of plant i's genes that came through plant j. */
  double relationshipToSelf(int plant) {
    double sum = 0;
    pass(plant, 1);
    for (int j = plant; j >= 0; j = pending.previousSetBit(j)) {
      double share = genes[j];
      genes[j] = 0;
      pending.clear(j);
      sum += share * share * ownVariance[j];
      pass(mothers[j], share / 2);
      pass(fathers[j], share / 2);
    }
    return sum;
  }

  private void pass(int plant, double share) {
    if (plant != Pedigree.UNKNOWN) {
      genes[plant] += share;
      pending.set(plant);
    }
  }
}
