package trialwood.propagation;

import java.util.List;
import trialwood.lineage.Accession;
import trialwood.site.Bench;

/**
 * A bench plan as it is asked for.
 *
 * @param entries what stands once in each block; one that is stuck in two ways is named twice
 * @param benches one for all blocks, or one for each, in their order along the gradient
 * @param firstPlace from which the places of each bench are numbered on
 */
public record NewPlan(
    List<Accession> entries, int blocks, List<Bench> benches, int firstPlace, long seed) {

  public NewPlan {
    entries = List.copyOf(entries);
    benches = List.copyOf(benches);
  }

  /** The bench of a block, numbered from 1. */
  Bench benchOf(int block) {
    return benches.get(benches.size() == 1 ? 0 : block - 1);
  }

  /** The first place of a block along its bench. */
  int startOf(int block) {
    return firstPlace + (benches.size() == 1 ? (block - 1) * entries.size() : 0);
  }

  /** The last place that is needed on a bench. */
  int lastPlace() {
    return startOf(benches.size() == 1 ? blocks : 1) + entries.size() - 1;
  }
}
