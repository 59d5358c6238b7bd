package trialwood.trial;

import java.util.UUID;
import trialwood.analysis.trial.SiteSeason;

/**
 * Why records of one season at one site are not in the reckoning.
 *
 * @param site the site's code
 * @param siteName as people call it
 * @param reason hail 19 July 2025; dead; not looked at
 * @param plots how many plots it concerns
 */
public record Gap(
    UUID trialId, String site, String siteName, int season, String reason, int plots) {

  SiteSeason at() {
    return new SiteSeason(site, season);
  }

  /** Corrow Hill 2025: hail 19 July 2025, 32 plots. */
  public String sentence() {
    return "%s %d: %s, %d %s"
        .formatted(siteName, season, reason, plots, plots == 1 ? "plot" : "plots");
  }
}
