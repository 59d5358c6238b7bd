package trialwood.crop;

/** Which way a trait is better. */
public enum Better {
  HIGHER,
  LOWER,
  TARGET,
  NEITHER
}
