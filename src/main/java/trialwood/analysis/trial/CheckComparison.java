package trialwood.analysis.trial;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.PlantSample;

/**
 * One entry against one named check over sites and seasons, in the unit of the trait.
 *
 * <p>In each site-season the difference d = entry − check. For each site the plain average of d
 * over its seasons; over sites the plain average D of the k site values: sites weigh equally,
 * however many seasons each has. The error is the variation of the site differences themselves, s²
 * = Σ(dᵢ − D)²/(k − 1), which is the interaction of entry and site with all smaller errors inside
 * it. Then
 *
 * <pre>
 *  on average:   (truth − D) / (s √(1/k))      ~ Student, k − 1 df
 *  in a new site: (next − D) / (s √(1 + 1/k))  ~ Student, k − 1 df
 * </pre>
 *
 * A site-season without a value of the entry or of the check is listed by name and enters nothing.
 *
 * <p>Source: Yates, F. and Cochran, W. G. (1938) The analysis of groups of experiments. Journal of
 * Agricultural Science 28, 556–580
 *
 * @param entry candidate compared
 * @param check the check it is compared with
 * @param better which way is the better one
 * @param siteSeasons differences by site-season, in order of site and season
 * @param sites averages by site
 * @param missing planned site-seasons without a difference, each with its reason
 * @param average D, the plain average over sites
 * @param ahead site-seasons in which the entry was strictly better
 * @param worst the site-season least in favour of the entry
 * @param onAverage D as a belief; lacking for one site
 * @param inNewSite the difference in a site not yet tried; lacking for one site
 */
public record CheckComparison(
    String entry,
    String check,
    Better better,
    List<SiteSeasonDifference> siteSeasons,
    List<SiteDifference> sites,
    List<MissingSiteSeason> missing,
    double average,
    int ahead,
    SiteSeasonDifference worst,
    Answer<StudentBelief> onAverage,
    Answer<StudentBelief> inNewSite) {

  /** Entry − check in one site-season; {@code plots} is the smaller number of the two. */
  public record SiteSeasonDifference(SiteSeason at, double difference, int plots) {}

  /** Plain average over the seasons of one site. */
  public record SiteDifference(String site, double difference, int seasons) {}

  /** A planned site-season that gave no difference, and why. */
  public record MissingSiteSeason(SiteSeason at, String reason) {}

  private static final String ONE_SITE =
      "One site only: how the difference varies from site to site cannot be judged from it.";

  /** Plans every site in every season that occurs among the cells of any entry. */
  public static Answer<CheckComparison> of(
      Collection<TrialCell> cells, String entry, String check, Better better) {
    List<String> sites = cells.stream().map(cell -> cell.at().site()).distinct().toList();
    List<SiteSeason> planned =
        cells.stream()
            .map(cell -> cell.at().season())
            .distinct()
            .flatMap(season -> sites.stream().map(site -> new SiteSeason(site, season)))
            .toList();
    return of(cells, planned, entry, check, better);
  }

  /**
   * Compares the two, and lists what is missing among the planned site-seasons. Lacking if entry
   * and check never stood together.
   *
   * @param cells of all entries; other entries than the two are ignored
   * @param planned the site-seasons in which both should have a mean
   * @throws IllegalArgumentException if entry and check are the same, or one of them has two means
   *     for one site-season
   */
  public static Answer<CheckComparison> of(
      Collection<TrialCell> cells,
      Collection<SiteSeason> planned,
      String entry,
      String check,
      Better better) {
    Refuse.unless(!entry.equals(check), "%s cannot be compared with itself.", entry);
    SortedMap<SiteSeason, TrialCell> ofEntry = cellsOf(cells, entry);
    SortedMap<SiteSeason, TrialCell> ofCheck = cellsOf(cells, check);
    var differences = new ArrayList<SiteSeasonDifference>();
    ofEntry.forEach(
        (at, cell) -> {
          TrialCell beside = ofCheck.get(at);
          if (beside != null) {
            differences.add(
                new SiteSeasonDifference(
                    at, cell.mean() - beside.mean(), Math.min(cell.plots(), beside.plots())));
          }
        });
    if (differences.isEmpty()) {
      return Answer.lacking("%s and %s have no site-season in common.".formatted(entry, check));
    }
    var missing = new ArrayList<MissingSiteSeason>();
    for (SiteSeason at : new TreeSet<>(planned)) {
      boolean noEntry = !ofEntry.containsKey(at);
      boolean noCheck = !ofCheck.containsKey(at);
      if (noEntry || noCheck) {
        String who = noEntry && noCheck ? entry + " and " + check : noEntry ? entry : check;
        missing.add(new MissingSiteSeason(at, "no value for " + who));
      }
    }
    List<SiteDifference> sites = bySite(differences);
    var overSites =
        PlantSample.of(sites.stream().mapToDouble(SiteDifference::difference).toArray());
    return Answer.known(
        new CheckComparison(
            entry,
            check,
            better,
            List.copyOf(differences),
            sites,
            List.copyOf(missing),
            overSites.mean(),
            (int) differences.stream().filter(d -> better.favours(d.difference())).count(),
            Collections.min(
                differences, Comparator.comparingDouble(d -> better.gain(d.difference()))),
            belief(overSites, 0),
            belief(overSites, 1)));
  }

  /** Probability that the entry is truly better than the check on average over sites. */
  public Answer<Double> chanceBetter() {
    return chance(onAverage);
  }

  /** Probability that the entry would be better than the check in a site not yet tried. */
  public Answer<Double> chanceBetterInNewSite() {
    return chance(inNewSite);
  }

  /**
   * The plain reading beside it: every site-season as if independent of the others, so that a site
   * weighs by its number of seasons. Its intervals are too narrow where sites differ.
   */
  public Answer<StudentBelief> plainReading() {
    return PlantSample.of(
            siteSeasons.stream().mapToDouble(SiteSeasonDifference::difference).toArray())
        .beliefOfMean();
  }

  private Answer<Double> chance(Answer<StudentBelief> difference) {
    return difference instanceof Answer.Known<StudentBelief> known
        ? Answer.known(better.chance(known.answer()))
        : Answer.lacking(ONE_SITE);
  }

  private static SortedMap<SiteSeason, TrialCell> cellsOf(
      Collection<TrialCell> cells, String entry) {
    var own = new TreeMap<SiteSeason, TrialCell>();
    for (TrialCell cell : cells) {
      if (cell.entry().equals(entry)) {
        Refuse.unless(
            own.put(cell.at(), cell) == null, "%s has two means at %s.", entry, cell.at());
      }
    }
    return own;
  }

  private static List<SiteDifference> bySite(List<SiteSeasonDifference> differences) {
    return differences.stream()
        .collect(groupingBy(difference -> difference.at().site(), TreeMap::new, toList()))
        .entrySet()
        .stream()
        .map(
            site ->
                new SiteDifference(
                    site.getKey(),
                    site.getValue().stream()
                        .mapToDouble(SiteSeasonDifference::difference)
                        .average()
                        .orElseThrow(),
                    site.getValue().size()))
        .toList();
  }

  /** The average over sites ({@code further} 0), or the next site ({@code further} 1). */
  private static Answer<StudentBelief> belief(PlantSample sites, int further) {
    if (!(sites.sd() instanceof Answer.Known<Double> sd)) {
      return Answer.lacking(ONE_SITE);
    }
    double se = sd.answer() * Math.sqrt(1.0 / sites.n() + further);
    return Answer.known(new StudentBelief(sites.mean(), se, sites.n() - 1));
  }
}
