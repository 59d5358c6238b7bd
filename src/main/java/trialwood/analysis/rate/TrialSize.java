package trialwood.analysis.rate;

import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * The size of a rooting trial: trays × cuttings for a wanted half-width of the interval of p. With
 * T trays of n cuttings and intra-tray correlation ρ,
 *
 * <pre>h = z √( p(1 − p)(1 + (n − 1)ρ) / (Tn) )</pre>
 *
 * so that filling the trays helps little once nρ is well above 1: at least z²p(1 − p)ρ/h² trays are
 * needed however large they are. A normal approximation, for planning only.
 *
 * <p>Source: Kish, L. (1965) Survey Sampling. Wiley, section 5.4, for the design effect 1 + (n −
 * 1)ρ
 *
 * @param trays T
 * @param cuttingsPerTray n
 * @param share p expected, a fraction
 * @param likeness ρ
 * @param level of the interval
 * @param halfWidth h reached, a fraction, not above the one wanted
 */
public record TrialSize(
    int trays, int cuttingsPerTray, double share, double likeness, double level, double halfWidth) {

  private static final int MOST_TRAYS = 100_000;

  /**
   * The smallest number of trays that reaches the half-width; lacking above {@value #MOST_TRAYS}.
   *
   * @throws IllegalArgumentException if cuttings &lt; 1, ρ is outside [0, 1), or share, level or
   *     half-width is not inside (0, 1)
   */
  public static Answer<TrialSize> forHalfWidth(
      double wanted, int cuttingsPerTray, double share, double likeness, double level) {
    Refuse.unlessInside(wanted, "half-width wanted");
    double single = halfWidth(1, cuttingsPerTray, share, likeness, level);
    // a hair less, so that a width met exactly is not missed by rounding
    double trays = Math.max(1, Math.ceil(Math.pow(single / wanted, 2) * (1 - 1e-12)));
    if (trays > MOST_TRAYS) {
      return Answer.lacking("No trial of a bearable size is so precise.");
    }
    return Answer.known(of((int) trays, cuttingsPerTray, share, likeness, level));
  }

  /** What a trial of a given size reaches; refuses like {@link #forHalfWidth}, and trays &lt; 1. */
  public static TrialSize of(
      int trays, int cuttingsPerTray, double share, double likeness, double level) {
    return new TrialSize(
        trays,
        cuttingsPerTray,
        share,
        likeness,
        level,
        halfWidth(trays, cuttingsPerTray, share, likeness, level));
  }

  /** All cuttings stuck. */
  public long cuttings() {
    return (long) trays * cuttingsPerTray;
  }

  private static double halfWidth(
      int trays, int cuttingsPerTray, double share, double likeness, double level) {
    Refuse.unless(trays > 0, "A trial needs at least one tray, not %d.", trays);
    Refuse.unless(cuttingsPerTray > 0, "A tray holds at least one cutting.");
    Refuse.unlessInside(share, "share expected");
    Refuse.unlessInside(level, "level of an interval");
    Refuse.unless(
        likeness >= 0 && likeness < 1,
        "The likeness inside a tray lies from 0 to under 1, not at %s.",
        likeness);
    double z = Quantile.of(NormalDistribution.of(0, 1), (1 + level) / 2);
    double effect = 1 + (cuttingsPerTray - 1) * likeness;
    return z * Math.sqrt(share * (1 - share) * effect / ((double) trays * cuttingsPerTray));
  }
}
