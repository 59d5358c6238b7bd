package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.means.PlantSample;

/**
 * What was seen of one trait on one accession.
 *
 * @param n plants or plots with a value, each counted once however often it was seen
 * @param seasons in which it was seen
 * @param numbers each plant's own mean, in the unit of the trait; none where none has a number
 * @param words the other values, the most frequent first, each with its number of plants
 * @param sites where, in order of name
 */
public record Sample(
    int n,
    int seasons,
    @Nullable PlantSample numbers,
    String words,
    @Nullable LocalDate from,
    @Nullable LocalDate until,
    String sites) {

  /** Fewer plants than this will be asked about: common practice, no source. */
  public static final int ENOUGH = 10;

  static Sample of(Collection<Seen> seen) {
    List<Double> numbers = meansOfPlants(seen);
    return new Sample(
        (int) seen.stream().map(Seen::unitId).distinct().count(),
        (int) seen.stream().map(Seen::season).distinct().count(),
        numbers.isEmpty() ? null : PlantSample.of(numbers),
        words(seen),
        seen.stream().map(Seen::onDate).min(Comparator.naturalOrder()).orElse(null),
        seen.stream().map(Seen::onDate).max(Comparator.naturalOrder()).orElse(null),
        seen.stream().map(Seen::place).distinct().sorted().collect(Collectors.joining(", ")));
  }

  private static List<Double> meansOfPlants(Collection<Seen> seen) {
    return List.copyOf(
        seen.stream()
            .filter(it -> it.number() != null)
            .collect(
                Collectors.groupingBy(
                    Seen::unitId,
                    TreeMap::new,
                    Collectors.averagingDouble(
                        it -> Objects.requireNonNull(it.number()).doubleValue())))
            .values());
  }

  /** Over the plants. */
  public @Nullable Double mean() {
    return numbers == null ? null : numbers.mean();
  }

  /** Between the plants, from two on. */
  public @Nullable Double sd() {
    return numbers == null ? null : numbers.sd().value().orElse(null);
  }

  public boolean isEnough() {
    return n >= ENOUGH;
  }

  private static String words(Collection<Seen> seen) {
    return seen.stream()
        .filter(it -> it.words() != null)
        .collect(
            Collectors.groupingBy(
                it -> Objects.requireNonNull(it.words()),
                Collectors.mapping(
                    Seen::unitId, Collectors.collectingAndThen(Collectors.toSet(), Set::size))))
        .entrySet()
        .stream()
        .sorted(
            Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(word -> word.getKey() + " (" + word.getValue() + ")")
        .collect(Collectors.joining(", "));
  }
}
