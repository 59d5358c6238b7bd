package trialwood.trial;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trialwood.analysis.trial.SiteSeason;
import trialwood.analysis.trial.TrialCell;

/**
 * One trait over the site-seasons of some trials.
 *
 * @param means in order of trial, site, season and entry
 * @param gaps what is left out, and why
 */
public record TraitSeasons(List<SeasonMean> means, List<Gap> gaps) {

  public TraitSeasons {
    means = List.copyOf(means);
    gaps = List.copyOf(gaps);
  }

  /** The same of one trial only. */
  TraitSeasons of(UUID trialId) {
    return new TraitSeasons(
        means.stream().filter(mean -> mean.trialId().equals(trialId)).toList(),
        gaps.stream().filter(gap -> gap.trialId().equals(trialId)).toList());
  }

  Set<UUID> trials() {
    return means.stream().map(SeasonMean::trialId).collect(Collectors.toUnmodifiableSet());
  }

  /** What can be reckoned with; of one trial, or entries that stood in two would count twice. */
  public List<TrialCell> cells() {
    return means.stream()
        .filter(mean -> mean.mean() != null)
        .map(mean -> new TrialCell(mean.accession(), mean.at(), mean.mean(), mean.plots()))
        .toList();
  }

  /** Every site in every season in which anybody looked for the trait anywhere. */
  public List<SiteSeason> planned() {
    Set<Integer> seasons = new TreeSet<>();
    means.forEach(mean -> seasons.add(mean.season()));
    return Stream.concat(means.stream().map(SeasonMean::site), gaps.stream().map(Gap::site))
        .distinct()
        .sorted()
        .flatMap(site -> seasons.stream().map(season -> new SiteSeason(site, season)))
        .toList();
  }

  /** The site-seasons of which nothing is left to reckon with, each with its reason. */
  public List<String> lost() {
    Set<SiteSeason> known = new HashSet<>();
    cells().forEach(cell -> known.add(cell.at()));
    return planned().stream()
        .filter(at -> !known.contains(at))
        .flatMap(at -> reasons(gaps, at))
        .toList();
  }

  private static Stream<String> reasons(Collection<Gap> gaps, SiteSeason at) {
    List<String> named =
        gaps.stream().filter(gap -> gap.at().equals(at)).map(Gap::sentence).toList();
    return named.isEmpty() ? Stream.of(at + ": nothing on record") : named.stream();
  }
}
