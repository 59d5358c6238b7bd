package trialwood.analysis.selection;

/**
 * One plant's additive relationship to every plant of a pedigree: twice the probability that genes
 * drawn from the two are copies of one. To itself it is 1 + F; 1 to a plant that was selfed from a
 * parent not inbred, ½ to a parent, ¼ to a half sib.
 *
 * <p>A column of A = T D T′ in two sweeps over the pedigree: back to the ancestors for T′, forward
 * to the offspring for T; so no table of all pairs is needed.
 *
 * <p>Sources: Henderson, C. R. (1976) A simple method for computing the inverse of a numerator
 * relationship matrix. Biometrics 32, 69–83; Colleau, J. J. (2002) An indirect approach to the
 * extensive calculation of relationship coefficients. Genetics Selection Evolution 34, 409–421
 */
public final class Relationships {

  private final Pedigree pedigree;
  private final double[] column;

  private Relationships(Pedigree pedigree, double[] column) {
    this.pedigree = pedigree;
    this.column = column;
  }

  /**
   * @throws IllegalArgumentException if the plant is not in the pedigree
   */
  public static Relationships of(Pedigree pedigree, String plant) {
    double[] column = new double[pedigree.size()];
    column[pedigree.positionOf(plant)] = 1;
    for (int i = column.length - 1; i >= 0; i--) {
      for (int parent : new int[] {pedigree.mother(i), pedigree.father(i)}) {
        if (parent != Pedigree.UNKNOWN) {
          column[parent] += column[i] / 2;
        }
      }
    }
    for (int i = 0; i < column.length; i++) {
      column[i] *= pedigree.ownVariance(i);
      for (int parent : new int[] {pedigree.mother(i), pedigree.father(i)}) {
        column[i] += parent == Pedigree.UNKNOWN ? 0 : column[parent] / 2;
      }
    }
    return new Relationships(pedigree, column);
  }

  /**
   * @throws IllegalArgumentException if the other plant is not in the pedigree
   */
  public double to(String other) {
    return column[pedigree.positionOf(other)];
  }
}
