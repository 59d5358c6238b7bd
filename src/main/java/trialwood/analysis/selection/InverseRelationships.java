package trialwood.analysis.selection;

import java.util.HashMap;
import java.util.Map;
import trialwood.analysis.Answer;

/**
 * The inverse of the relationship matrix, written down directly: plant i with parents m and f adds
 * vv′/d_i, where v is 1 for the plant and −½ for each known parent and d_i is what its parents do
 * not determine. Nearly all of it is 0.
 *
 * <p>Sources: Henderson, C. R. (1976) Biometrics 32, 69–83; with inbreeding: Quaas, R. L. (1976)
 * Computing the diagonal elements and inverse of a large numerator relationship matrix. Biometrics
 * 32, 949–953
 */
public final class InverseRelationships {

  private final Pedigree pedigree;
  private final Map<Long, Double> entries = new HashMap<>();

  private InverseRelationships(Pedigree pedigree) {
    this.pedigree = pedigree;
    for (int i = 0; i < pedigree.size(); i++) {
      int[] plants = {i, pedigree.mother(i), pedigree.father(i)};
      double[] parts = {1, -0.5, -0.5};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          if (plants[r] != Pedigree.UNKNOWN && plants[c] != Pedigree.UNKNOWN) {
            double part = parts[r] * parts[c] / pedigree.ownVariance(i);
            entries.merge(key(plants[r], plants[c]), part, Double::sum);
          }
        }
      }
    }
  }

  /** Lacking where the relationship matrix is singular. */
  public static Answer<InverseRelationships> of(Pedigree pedigree) {
    return pedigree.singular()
        ? Answer.lacking(Pedigree.SINGULAR)
        : Answer.known(new InverseRelationships(pedigree));
  }

  /** The entry of two plants; 0 for plants that are neither parent and offspring nor mates. */
  public double at(String one, String other) {
    return at(pedigree.positionOf(one), pedigree.positionOf(other));
  }

  double at(int one, int other) {
    return entries.getOrDefault(key(one, other), 0.0);
  }

  /** Sees every entry that is not 0, both sides of the diagonal. */
  void forEach(Entry seen) {
    entries.forEach(
        (key, value) ->
            seen.at((int) (key / pedigree.size()), (int) (key % pedigree.size()), value));
  }

  /** What is done with an entry. */
  interface Entry {
    void at(int row, int column, double value);
  }

  private long key(int row, int column) {
    return (long) row * pedigree.size() + column;
  }
}
