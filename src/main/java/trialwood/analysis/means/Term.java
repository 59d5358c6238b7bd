package trialwood.analysis.means;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import trialwood.analysis.Refuse;

/**
 * A term of a model: a factor, or the combination of several, written {@code site:entry}.
 *
 * @param factors at least one, none twice
 */
record Term(List<String> factors) {

  Term {
    factors = List.copyOf(factors);
    Refuse.unless(
        !factors.isEmpty() && Set.copyOf(factors).size() == factors.size(),
        "A term names every factor once, not %s.",
        factors);
  }

  static Term of(String text) {
    return new Term(Arrays.stream(text.split(":")).map(String::strip).toList());
  }

  String name() {
    return String.join(":", factors);
  }

  /** Whether the other term's factors all occur here. */
  boolean contains(Term other) {
    return factors.containsAll(other.factors);
  }

  boolean sameAs(Set<String> others) {
    return Set.copyOf(factors).equals(others);
  }
}
