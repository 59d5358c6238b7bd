package trialwood.analysis.selection;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A plant and its parents. An unknown parent is taken as unrelated to all others and not inbred; a
 * selfed plant has one plant as both parents.
 *
 * @param id its name, different from all others
 * @param mother its seed parent, where known
 * @param father its pollen parent, where known
 */
public record Plant(String id, @Nullable String mother, @Nullable String father) {

  /** A plant of unknown origin. */
  public static Plant founder(String id) {
    return new Plant(id, null, null);
  }

  /** Offspring of one plant's own pollen. */
  public static Plant selfed(String id, String parent) {
    return new Plant(id, parent, parent);
  }

  /** The known parents: none to two, one plant twice for a selfed one. */
  List<String> parents() {
    return Stream.of(mother, father).filter(Objects::nonNull).map(Objects::requireNonNull).toList();
  }
}
