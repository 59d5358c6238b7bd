package trialwood.evidence;

/**
 * Something that can be computed from the records of one candidate.
 *
 * @param key as a gate policy names it, {@code propagation.rooted}
 * @param label as people read it
 * @param unit of its values, and of the lines a policy draws for it; empty for a bare number
 * @param definition one sentence to print beside it
 */
public record Metric(String key, String label, String unit, String definition) {

  /** The unit of what either holds or does not: 1 is yes, 0 is no. */
  public static final String YES_OR_NO = "yes or no";
}
