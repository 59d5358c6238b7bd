package trialwood.analysis.trial;

import trialwood.analysis.Refuse;

/**
 * The mean of one entry in one site-season.
 *
 * @param entry candidate or check
 * @param at where and when
 * @param mean in the unit of the trait
 * @param plots number of plots behind the mean, at least 1
 */
public record TrialCell(String entry, SiteSeason at, double mean, int plots) {

  public TrialCell {
    Refuse.unless(!entry.isBlank(), "An entry needs a name.");
    Refuse.unlessFinite(mean, "mean of " + entry + " at " + at);
    Refuse.unless(plots > 0, "The mean of %s at %s needs at least one plot.", entry, at);
  }

  public TrialCell(String entry, String site, int season, double mean, int plots) {
    this(entry, new SiteSeason(site, season), mean, plots);
  }
}
