package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/**
 * How strong a hormone solution or powder is, in parts per million.
 *
 * <p>In dilute water solution 1 ppm = 1 mg/L, and 1 % = 10,000 ppm. Common practice, no source.
 *
 * @param ppm above 0, at most a million
 */
public record Strength(double ppm) {

  private static final double PPM_PER_PERCENT = 10_000;
  private static final double ALL = 1_000_000;

  /** Grams in a mole of indole-3-butyric acid and of its potassium salt; from memory. */
  private static final double IBA = 203.24;

  private static final double K_IBA = 241.33;

  public Strength {
    Refuse.unless(
        ppm > 0 && ppm <= ALL, "A strength lies above 0 and up to 100 %%, not %s ppm.", ppm);
  }

  public static Strength ofPpm(double ppm) {
    return new Strength(ppm);
  }

  public static Strength ofPercent(double percent) {
    return new Strength(percent * PPM_PER_PERCENT);
  }

  public static Strength ofMilligramsPerLitre(double milligrams) {
    return new Strength(milligrams);
  }

  public double percent() {
    return ppm / PPM_PER_PERCENT;
  }

  /** Taken as K-IBA, the same said as IBA: × 203.24 ÷ 241.33. */
  public Strength saltAsAcid() {
    return new Strength(ppm * IBA / K_IBA);
  }

  /** Taken as IBA, the K-IBA that holds as much: × 241.33 ÷ 203.24. */
  public Strength acidAsSalt() {
    return new Strength(ppm * K_IBA / IBA);
  }
}
