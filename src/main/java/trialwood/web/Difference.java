package trialwood.web;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where two ways of describing one record part. */
public record Difference(String label, String before, String after) {

  /** Label by label, only those that differ; what one of the two does not have reads as a dash. */
  public static List<Difference> between(Map<String, String> before, Map<String, String> after) {
    Set<String> labels = new LinkedHashSet<>(before.keySet());
    labels.addAll(after.keySet());
    return labels.stream()
        .map(label -> new Difference(label, word(before, label), word(after, label)))
        .filter(difference -> !difference.before.equals(difference.after))
        .toList();
  }

  private static String word(Map<String, String> words, String label) {
    String word = words.getOrDefault(label, "").strip();
    return word.isEmpty() ? Measures.NONE : word;
  }
}
