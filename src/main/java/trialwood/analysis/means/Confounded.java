package trialwood.analysis.means;

import java.util.List;

/**
 * A term of which the layout leaves some or all degrees of freedom to terms before it.
 *
 * @param term as named in the model
 * @param lost degrees of freedom that cannot be told from other terms
 * @param of degrees of freedom in a complete layout; 0 for a factor with one level
 * @param with the terms they fall together with; empty for the mean alone
 */
public record Confounded(String term, int lost, int of, List<String> with) {

  /** What to show beside the table. */
  public String sentence() {
    if (of == 0) {
      return "%s has one level only and explains nothing.".formatted(term);
    }
    String others = with.isEmpty() ? "the mean" : String.join(", ", with);
    return lost == of
        ? "%s cannot be told from %s and is left out.".formatted(term, others)
        : "%d of %d degrees of freedom of %s cannot be told from %s."
            .formatted(lost, of, term, others);
  }
}
