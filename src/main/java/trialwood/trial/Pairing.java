package trialwood.trial;

import static java.util.stream.Collectors.averagingDouble;
import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import trialwood.analysis.Answer;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.SiteSeason;
import trialwood.analysis.trial.TrialCell;

/**
 * An entry beside its check, only where both stood in one trial: another trial's entry grew in
 * another block, often at another age. Where two trials have both of them in one site-season, the
 * two differences count equally.
 *
 * @param entry the entry's code
 * @param check the check's code, or codes where trials differ
 * @param sides both means of each common site-season of each trial
 * @param planned the site-seasons of these trials
 * @param lost those of which nothing is left, each with its reason
 */
record Pairing(
    String entry, String check, List<Side> sides, List<SiteSeason> planned, List<String> lost) {

  /** The two means; the check's is never missing. */
  record Side(SiteSeason at, SeasonMean entry, SeasonMean check) {

    double ratio() {
      return value(entry) / value(check);
    }

    static double value(SeasonMean mean) {
      return mean.mean() == null ? Double.NaN : mean.mean();
    }
  }

  /**
   * @param checks the check's accession in each trial that has one
   */
  static Pairing of(TraitSeasons seasons, UUID accession, Map<UUID, UUID> checks) {
    List<Side> sides = new ArrayList<>();
    Set<SiteSeason> planned = new TreeSet<>();
    List<String> lost = new ArrayList<>();
    checks.forEach(
        (trial, check) -> {
          TraitSeasons here = seasons.of(trial);
          Map<SiteSeason, SeasonMean> ofCheck = known(here, check);
          List<Side> both = new ArrayList<>();
          known(here, accession)
              .forEach(
                  (at, mean) -> {
                    SeasonMean beside = ofCheck.get(at);
                    if (beside != null) {
                      both.add(new Side(at, mean, beside));
                    }
                  });
          if (!both.isEmpty() && !check.equals(accession)) {
            sides.addAll(both);
            planned.addAll(here.planned());
            lost.addAll(here.lost());
          }
        });
    return new Pairing(
        sides.isEmpty() ? "" : sides.get(0).entry().accession(),
        sides.stream()
            .map(side -> side.check().accession())
            .distinct()
            .sorted()
            .collect(Collectors.joining(" and ")),
        List.copyOf(sides),
        List.copyOf(planned),
        lost.stream().distinct().toList());
  }

  private static Map<SiteSeason, SeasonMean> known(TraitSeasons seasons, UUID accession) {
    return seasons.means().stream()
        .filter(mean -> mean.accessionId().equals(accession) && mean.mean() != null)
        .collect(Collectors.toMap(SeasonMean::at, mean -> mean, (one, other) -> one, TreeMap::new));
  }

  boolean isEmpty() {
    return sides.isEmpty();
  }

  /** The comparison over sites, each site weighing the same. */
  Answer<CheckComparison> compared(Better better) {
    List<TrialCell> cells = new ArrayList<>();
    sides.stream()
        .collect(groupingBy(Side::at, TreeMap::new, Collectors.toList()))
        .forEach(
            (at, here) -> {
              cells.add(
                  new TrialCell(
                      entry,
                      at,
                      here.stream().collect(averagingDouble(s -> Side.value(s.entry()))),
                      here.stream().mapToInt(s -> s.entry().plots()).sum()));
              cells.add(
                  new TrialCell(
                      check,
                      at,
                      here.stream().collect(averagingDouble(s -> Side.value(s.check()))),
                      here.stream().mapToInt(s -> s.check().plots()).sum()));
            });
    return CheckComparison.of(cells, planned, entry, check, better);
  }
}
