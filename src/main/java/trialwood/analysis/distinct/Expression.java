package trialwood.analysis.distinct;

/**
 * How a characteristic is expressed, and what two notes of it say of two varieties that stood side
 * by side.
 *
 * <p>Source: UPOV TG/1/3, General Introduction, chapters 4 and 5; two notes are a guide there, not
 * an absolute standard
 */
public enum Expression {
  /** Qualitative: separate states, untouched by the place. */
  QL(1),
  /** Quantitative: one range from one end to the other. */
  QN(2),
  /** Pseudo-qualitative: more than one range, such as shape or colour. */
  PQ(Integer.MAX_VALUE);

  private final int apart;

  /** What the notes say. */
  public enum Verdict {
    CLEAR,
    NOT_CLEAR,
    /** The notes differ, but only a person who looks at both can say whether clearly. */
    A_PERSON_DECIDES
  }

  Expression(int apart) {
    this.apart = apart;
  }

  /** What two notes of varieties in one trial say. */
  public Verdict compare(int note, int other) {
    long difference = Math.abs((long) note - other);
    if (difference == 0) {
      return Verdict.NOT_CLEAR;
    }
    return difference >= apart ? Verdict.CLEAR : Verdict.A_PERSON_DECIDES;
  }
}
