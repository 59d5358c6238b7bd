package trialwood.analysis.mixed;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trialwood.analysis.Refuse;

/**
 * A classification of values: each value has one of the levels.
 *
 * @param name as it appears in answers, {@code entry} or {@code entry:site}
 * @param levels in alphabetical order, each occurring at least once
 * @param codes for each value the index of its level
 */
public record Factor(String name, List<String> levels, int[] codes) {

  /** Reads the levels off the values' labels, one label a value. */
  public static Factor of(String name, List<String> labels) {
    Map<String, Integer> found = new HashMap<>();
    int[] first = new int[labels.size()];
    for (int i = 0; i < first.length; i++) {
      first[i] = found.computeIfAbsent(labels.get(i), label -> found.size());
    }
    String[] levels = new String[found.size()];
    found.forEach((label, code) -> levels[code] = label);
    return sorted(name, levels, first);
  }

  /** The combinations of two factors that occur; named and labelled with a colon between. */
  public static Factor crossed(Factor one, Factor other) {
    Refuse.unless(
        one.codes.length == other.codes.length,
        "%s and %s classify different numbers of values.",
        one.name,
        other.name);
    Combination pairs = Combination.of(one.codes, other.codes);
    String[] levels = new String[pairs.count()];
    for (int i = 0; i < one.codes.length; i++) {
      int pair = pairs.codes()[i];
      if (levels[pair] == null) {
        levels[pair] = one.levels.get(one.codes[i]) + ":" + other.levels.get(other.codes[i]);
      }
    }
    return new Factor(one.name + ":" + other.name, List.of(levels), pairs.codes());
  }

  /** How many values it classifies. */
  public int size() {
    return codes.length;
  }

  /** Whether values of one level here are always of one level there. */
  boolean isNestedIn(Factor outer) {
    int[] owner = new int[levels.size()];
    Arrays.fill(owner, -1);
    for (int i = 0; i < codes.length; i++) {
      int level = codes[i];
      if (owner[level] < 0) {
        owner[level] = outer.codes[i];
      } else if (owner[level] != outer.codes[i]) {
        return false;
      }
    }
    return true;
  }

  private static Factor sorted(String name, String[] levels, int[] first) {
    Integer[] order = new Integer[levels.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> levels[a].compareTo(levels[b]));
    int[] place = new int[levels.length];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
    int[] codes = new int[first.length];
    Arrays.setAll(codes, i -> place[first[i]]);
    return new Factor(name, Arrays.stream(order).map(i -> levels[i]).toList(), codes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Factor factor
        && name.equals(factor.name)
        && levels.equals(factor.levels)
        && Arrays.equals(codes, factor.codes);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return "%s (%d levels, %d values)".formatted(name, levels.size(), codes.length);
  }
}
