package trialwood.gate;

/** How a criterion is asked. */
public enum Kind {
  /** A recorded fact or an estimate reaches the line. */
  FACT,
  /** The true value reaches the line with at least a given chance. */
  CHANCE,
  /** No more are lost than chance allows a lot of that size. */
  ALLOWANCE,
  /** A person says so, because no record can. */
  ATTESTED
}
