package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.PlantSample;

/**
 * What was seen of one trait on one accession.
 *
 * @param n plants or parts with a value
 * @param mean of the values in numbers, in the unit of the trait
 * @param sd of the same, from two values on
 * @param words the other values, the most frequent first, each with its number
 * @param sites where, in order of name
 */
public record Sample(
    int n,
    @Nullable Double mean,
    @Nullable Double sd,
    String words,
    @Nullable LocalDate from,
    @Nullable LocalDate until,
    String sites) {

  /** Fewer plants or parts than this will be asked about: common practice, no source. */
  public static final int ENOUGH = 10;

  static Sample of(Collection<Seen> seen) {
    List<Double> numbers =
        seen.stream().map(Seen::number).filter(Objects::nonNull).map(Number::doubleValue).toList();
    @Nullable PlantSample sample = numbers.isEmpty() ? null : PlantSample.of(numbers);
    return new Sample(
        seen.size(),
        sample == null ? null : sample.mean(),
        sample == null ? null : sample.sd().value().orElse(null),
        words(seen),
        seen.stream().map(Seen::onDate).min(Comparator.naturalOrder()).orElse(null),
        seen.stream().map(Seen::onDate).max(Comparator.naturalOrder()).orElse(null),
        seen.stream()
            .map(it -> Objects.requireNonNullElse(it.site(), "the nursery"))
            .distinct()
            .sorted()
            .collect(Collectors.joining(", ")));
  }

  public boolean isEnough() {
    return n >= ENOUGH;
  }

  private static String words(Collection<Seen> seen) {
    return seen.stream()
        .map(Seen::words)
        .filter(Objects::nonNull)
        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()))
        .entrySet()
        .stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(word -> word.getKey() + " (" + word.getValue() + ")")
        .collect(Collectors.joining(", "));
  }
}
