package trialwood.analysis.trial;

import trialwood.analysis.StudentBelief;

/** Which way of a trait is the better one. */
public enum Better {
  HIGHER,
  LOWER;

  boolean favours(double difference) {
    return this == HIGHER ? difference > 0 : difference < 0;
  }

  /** The difference with its sign turned so that more is better. */
  double gain(double difference) {
    return this == HIGHER ? difference : -difference;
  }

  /** Probability that the true difference lies on the better side of 0. */
  public double chance(StudentBelief difference) {
    return (this == HIGHER ? difference : difference.negated()).chanceAtLeast(0);
  }
}
