package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A lot as it is potted.
 *
 * @param sources the trays or lots its plants were taken from; empty for plants bought in
 */
public record NewLot(
    String label, UUID accessionId, Pots pots, List<Taken> sources, @Nullable UUID personId) {

  /** So many plants out of one tray or lot. */
  public record Taken(UUID sourceId, int number) {}

  int taken() {
    return sources.stream().mapToInt(Taken::number).sum();
  }
}
