package trialwood.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.record.CorrectableFact;

/**
 * A record as it stands with those it took the place of.
 *
 * @param earlier the replaced ones, the latest first
 */
public record History<T extends CorrectableFact>(T latest, List<T> earlier) {

  /** One history for each record that none took the place of, in the order of the records. */
  static <T extends CorrectableFact> List<History<T>> of(List<T> all) {
    Map<UUID, T> byId =
        all.stream()
            .collect(Collectors.toMap(it -> Objects.requireNonNull(it.id()), Function.identity()));
    Set<@Nullable UUID> replaced =
        all.stream().map(CorrectableFact::supersedesId).collect(Collectors.toSet());
    return all.stream()
        .filter(it -> !replaced.contains(it.id()))
        .map(it -> new History<>(it, earlier(it, byId)))
        .toList();
  }

  private static <T extends CorrectableFact> List<T> earlier(T latest, Map<UUID, T> byId) {
    List<T> earlier = new ArrayList<>();
    for (@Nullable T it = before(latest, byId); it != null; it = before(it, byId)) {
      earlier.add(it);
    }
    return earlier;
  }

  private static <T extends CorrectableFact> @Nullable T before(T later, Map<UUID, T> byId) {
    UUID id = later.supersedesId();
    return id == null ? null : byId.get(id);
  }

  /** Of each two that follow one another, the later says why it took the other's place. */
  public T replacedBy(int nth) {
    return nth == 0 ? latest : earlier.get(nth - 1);
  }
}
