package trialwood.analysis.trial;

import trialwood.analysis.Refuse;

/**
 * What one plot had in one season.
 *
 * @param entry candidate or check
 * @param at where and when
 * @param block block at the site; blocks of different sites have nothing in common
 * @param plot the plot itself, the same in every season it was seen
 * @param value in the unit of the trait
 */
public record PlotValue(String entry, SiteSeason at, String block, String plot, double value) {

  public PlotValue {
    Refuse.unless(!entry.isBlank(), "An entry needs a name.");
    Refuse.unlessFinite(value, "value of " + entry + " at " + at);
  }
}
