package trialwood.analysis.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Inbreeding of plants that stand in an order of parents before offspring. A plant of few ancestors
 * is walked back to them, the youngest first: a_ii = Σ l²_ij d_j, with l_ij the share of its genes
 * that came through ancestor j (Meuwissen and Luo 1992). For a mother of many ancestors her
 * relationship to all her mates is swept out at once (Colleau 2002), and F is half of it. Plants of
 * one cross share their F.
 */
final class Inbreeding {

  /** Ancestors of a cross are many from this share of the pedigree on. */
  private static final int MANY = 16;

  private final int[] mothers;
  private final int[] fathers;
  private final int[] seedParent;
  private final int[] pollenParent;
  private final double[] column;
  private final double[] inbreeding;
  private final double[] ownVariance;
  private final double[] genes;
  private final BitSet pending;
  private final int[] ancestors;
  private final Map<Long, Double> crosses = new HashMap<>();
  private final Map<Integer, List<Integer>> mates = new HashMap<>();

  Inbreeding(int[] mothers, int[] fathers) {
    int size = mothers.length;
    this.mothers = mothers;
    this.fathers = fathers;
    this.seedParent = beyondIfUnknown(mothers);
    this.pollenParent = beyondIfUnknown(fathers);
    this.column = new double[size + 1];
    this.inbreeding = new double[size];
    this.ownVariance = new double[size];
    this.genes = new double[size];
    this.pending = new BitSet(size);
    this.ancestors = new int[size];
    for (int i = 0; i < size; i++) {
      if (mothers[i] != Pedigree.UNKNOWN && fathers[i] != Pedigree.UNKNOWN) {
        mates.computeIfAbsent(mothers[i], mother -> new ArrayList<>()).add(fathers[i]);
      }
    }
    for (int i = 0; i < size; i++) {
      ownVariance[i] = 1 - fromParent(mothers[i]) - fromParent(fathers[i]);
      ancestors[i] = 1 + Math.max(ancestors(mothers[i]), ancestors(fathers[i]));
      if (mothers[i] != Pedigree.UNKNOWN && fathers[i] != Pedigree.UNKNOWN) {
        inbreeding[i] = ofCross(i);
      }
    }
  }

  /** F of every plant. */
  double[] coefficients() {
    return inbreeding;
  }

  /** d of every plant: what its parents do not determine. */
  double[] ownVariances() {
    return ownVariance;
  }

  private double fromParent(int parent) {
    return parent == Pedigree.UNKNOWN ? 0 : (1 + inbreeding[parent]) / 4;
  }

  private int ancestors(int parent) {
    return parent == Pedigree.UNKNOWN ? 0 : ancestors[parent];
  }

  private double ofCross(int plant) {
    if (mothers[plant] == fathers[plant]) {
      return (1 + inbreeding[mothers[plant]]) / 2;
    }
    Double known = crosses.get(cross(mothers[plant], fathers[plant]));
    if (known != null) {
      return known;
    }
    if (ancestors[mothers[plant]] + ancestors[fathers[plant]] > mothers.length / MANY) {
      sweep(mothers[plant]);
    } else {
      crosses.put(cross(mothers[plant], fathers[plant]), walk(plant) - 1);
    }
    return crosses.get(cross(mothers[plant], fathers[plant]));
  }

  private long cross(int mother, int father) {
    return (long) mother * mothers.length + father;
  }

  /** a_ii from the plant's ancestors, counted on the way. */
  private double walk(int plant) {
    double sum = 0;
    int seen = 0;
    pass(plant, 1);
    for (int j = plant; j >= 0; j = pending.previousSetBit(j)) {
      double share = genes[j];
      genes[j] = 0;
      pending.clear(j);
      seen++;
      sum += share * share * ownVariance[j];
      pass(mothers[j], share / 2);
      pass(fathers[j], share / 2);
    }
    ancestors[plant] = seen;
    return sum;
  }

  private void pass(int plant, double share) {
    if (plant != Pedigree.UNKNOWN) {
      genes[plant] += share;
      pending.set(plant);
    }
  }

  /** The mother's relationship to all her mates, halved: F of each of her crosses. */
  private void sweep(int mother) {
    int nobody = mothers.length;
    Arrays.fill(column, 0);
    column[mother] = 1;
    for (int j = mother; j >= 0; j--) {
      double half = column[j] / 2;
      column[seedParent[j]] += half;
      column[pollenParent[j]] += half;
    }
    column[nobody] = 0;
    List<Integer> own = mates.getOrDefault(mother, List.of());
    int last = own.stream().mapToInt(Integer::intValue).max().orElse(mother);
    for (int j = 0; j <= last; j++) {
      double through = (column[seedParent[j]] + column[pollenParent[j]]) / 2;
      column[j] = column[j] * ownVariance[j] + through;
    }
    own.forEach(father -> crosses.put(cross(mother, father), column[father] / 2));
  }

  /** The parents, with one place beyond all plants for an unknown one. */
  private static int[] beyondIfUnknown(int[] parents) {
    return Arrays.stream(parents)
        .map(parent -> parent == Pedigree.UNKNOWN ? parents.length : parent)
        .toArray();
  }
}
