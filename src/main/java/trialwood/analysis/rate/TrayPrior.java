package trialwood.analysis.rate;

/**
 * What is believed before a run's trays are counted.
 *
 * @param share of the true proportion p
 * @param likeness of the intra-tray correlation ρ: how much more alike cuttings of one tray are
 *     than cuttings of different trays
 */
public record TrayPrior(BetaPrior share, BetaPrior likeness) {

  /**
   * p ~ Beta(½, ½), after Jeffreys; ρ ~ Beta(1, 19), mean 0.05: a working value for softwood trays,
   * re-estimated by {@link TrayHistory} once there are enough (common practice, no source).
   */
  public static final TrayPrior USUAL =
      new TrayPrior(new BetaPrior(0.5, 0.5), new BetaPrior(1, 19));
}
