package trialwood.trial;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.trial.SiteSeason;

/**
 * What one entry gave in one season at one site of one trial.
 *
 * @param site the site's code
 * @param season the calendar year
 * @param accession the accession's code
 * @param mean over the plots with a value, each plot counting once; none where no plot has one
 * @param plots with a value
 * @param without plots that were looked for and gave none, or whose value an event took out
 * @param newest the last day on which one of the values was taken
 */
public record SeasonMean(
    UUID trialId,
    String site,
    int season,
    UUID accessionId,
    String accession,
    @Nullable Double mean,
    int plots,
    int without,
    @Nullable LocalDate newest) {

  SiteSeason at() {
    return new SiteSeason(site, season);
  }
}
