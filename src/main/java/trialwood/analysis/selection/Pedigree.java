package trialwood.analysis.selection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * Plants in an order in which parents stand before their offspring, with their inbreeding F, the
 * probability that the two genes of a plant at one place are copies of one gene of an ancestor.
 *
 * <p>Sources: Meuwissen, T. H. E. and Luo, Z. (1992) Computing inbreeding coefficients in large
 * populations. Genetics Selection Evolution 24, 305–313; for plants of very many ancestors Colleau,
 * J. J. (2002) An indirect approach to the extensive calculation of relationship coefficients.
 * Genetics Selection Evolution 34, 409–421
 */
public final class Pedigree {

  static final int UNKNOWN = -1;

  /** A plant with no more variance of its own than this is a copy of its like. */
  private static final double COPY = 1e-12;

  static final String SINGULAR =
      "A plant bred from wholly inbred parents is a copy of its like: the pedigree has no inverse.";

  private final List<String> ids;
  private final Map<String, Integer> positions;
  private final int[] mothers;
  private final int[] fathers;
  private final double[] inbreeding;
  private final double[] ownVariance;

  private Pedigree(List<Plant> ordered) {
    int n = ordered.size();
    this.ids = ordered.stream().map(Plant::id).toList();
    this.positions = new HashMap<>();
    this.mothers = new int[n];
    this.fathers = new int[n];
    for (int i = 0; i < n; i++) {
      mothers[i] = position(ordered.get(i).mother());
      fathers[i] = position(ordered.get(i).father());
      positions.put(ids.get(i), i);
    }
    var bred = new Inbreeding(mothers, fathers);
    this.inbreeding = bred.coefficients();
    this.ownVariance = bred.ownVariances();
  }

  /**
   * @param plants in any order
   * @throws IllegalArgumentException if a plant stands there twice, a parent does not, or a plant
   *     is its own ancestor
   */
  public static Pedigree of(Collection<Plant> plants) {
    Map<String, Plant> byId = new HashMap<>();
    for (Plant plant : plants) {
      Refuse.unless(
          byId.put(plant.id(), plant) == null, "%s stands twice in the pedigree.", plant.id());
    }
    return new Pedigree(ordered(plants, byId));
  }

  public int size() {
    return ids.size();
  }

  /** Names, parents before offspring. */
  public List<String> ids() {
    return ids;
  }

  /**
   * F of a plant, 0 to 1.
   *
   * @throws IllegalArgumentException if it is not in the pedigree
   */
  public double inbreeding(String id) {
    return inbreeding[positionOf(id)];
  }

  /** log |A| = Σ log d_i; lacking where A is singular. */
  public Answer<Double> logDeterminant() {
    return singular()
        ? Answer.lacking(SINGULAR)
        : Answer.known(Arrays.stream(ownVariance).map(Math::log).sum());
  }

  /** Whether some plant, bred from wholly inbred parents, is a mere copy. */
  boolean singular() {
    return Arrays.stream(ownVariance).anyMatch(variance -> variance <= COPY);
  }

  int positionOf(String id) {
    Integer position = positions.get(id);
    if (position == null) {
      throw Refuse.because("%s is not in the pedigree.", id);
    }
    return position;
  }

  int mother(int plant) {
    return mothers[plant];
  }

  int father(int plant) {
    return fathers[plant];
  }

  double inbreeding(int plant) {
    return inbreeding[plant];
  }

  /** d: what of a plant's breeding value its parents do not determine, in units of σ²_A. */
  double ownVariance(int plant) {
    return ownVariance[plant];
  }

  private int position(@Nullable String parent) {
    return parent == null ? UNKNOWN : positionOf(parent);
  }

  /** Parents before offspring: whoever waits for no parent any more is next. */
  private static List<Plant> ordered(Collection<Plant> plants, Map<String, Plant> byId) {
    Map<String, List<Plant>> offspring = new HashMap<>();
    Map<String, Integer> waitsFor = new HashMap<>();
    var ready = new ArrayDeque<Plant>();
    for (Plant plant : plants) {
      List<String> parents = plant.parents();
      for (String parent : parents) {
        Refuse.unless(
            byId.containsKey(parent),
            "%s, parent of %s, is not in the pedigree.",
            parent,
            plant.id());
        offspring.computeIfAbsent(parent, name -> new ArrayList<>()).add(plant);
      }
      waitsFor.put(plant.id(), parents.size());
      if (parents.isEmpty()) {
        ready.add(plant);
      }
    }
    var ordered = new ArrayList<Plant>(plants.size());
    while (!ready.isEmpty()) {
      Plant plant = ready.remove();
      ordered.add(plant);
      for (Plant child : offspring.getOrDefault(plant.id(), List.of())) {
        if (waitsFor.merge(child.id(), -1, Integer::sum) == 0) {
          ready.add(child);
        }
      }
    }
    if (ordered.size() < plants.size()) {
      ordered.forEach(plant -> waitsFor.remove(plant.id()));
      throw Refuse.because(
          "%s would be its own ancestor.",
          waitsFor.keySet().stream().sorted().findFirst().orElseThrow());
    }
    return ordered;
  }
}
