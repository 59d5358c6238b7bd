package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.record.Problem;
import trialwood.unit.Unit;

/**
 * One accession's cuttings as they are stuck.
 *
 * @param plant the very plant they were taken from, where it is known
 * @param cells of each tray
 * @param stuck cuttings tray by tray
 * @param treatment only where it differs from the run's
 */
public record NewBatch(
    Accession accession,
    Batch.Source source,
    @Nullable Unit plant,
    LocalDate on,
    int cells,
    List<Integer> stuck,
    @Nullable Treatment treatment,
    @Nullable String note,
    @Nullable UUID personId) {

  /** Cells of the trays that are sold for it (common practice, no source). */
  public static final Set<Integer> USUAL_CELLS = Set.of(24, 32, 50, 72, 98, 128);

  public NewBatch {
    stuck = List.copyOf(stuck);
  }

  int cuttings() {
    return stuck.stream().mapToInt(Integer::intValue).sum();
  }

  /** What is unusual about the batch itself. */
  List<Problem> unusual(StickingRun run) {
    return new Unusual()
        .ask(
            !USUAL_CELLS.contains(cells),
            "cells",
            "A tray of %d cells: the usual ones have 24, 32, 50, 72, 98 or 128.".formatted(cells))
        .ask(treatment == null ? List.of() : treatment.unusual(run.cutting(), run.dipS(), on))
        .list();
  }
}
