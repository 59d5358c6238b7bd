package trialwood.trial.web;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import trialwood.analysis.Answer;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.stability.EntryStability;
import trialwood.analysis.stability.JointRegression;
import trialwood.analysis.stability.StabilityLine;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.SiteSeason;
import trialwood.analysis.trial.TrialCell;

/**
 * How each entry holds over the site-seasons in which all of them have a mean.
 *
 * @param entry its code
 * @param slope change per unit by which a site-season is better for all; 1 goes with the others
 * @param slopeError its standard error
 * @param shareOfInteraction its part of all that entries do differently from site-season to
 *     site-season, 0 to 1
 * @param superiority mean squared distance to the best of each site-season, halved; 0 for one that
 *     is best everywhere
 */
record Steadiness(
    String entry, double slope, double slopeError, double shareOfInteraction, double superiority) {

  /** One an entry, the steadiest first; empty where the table is too small to tell. */
  static List<Steadiness> of(Collection<TrialCell> cells, Better better) {
    Set<String> entries = cells.stream().map(TrialCell::entry).collect(Collectors.toSet());
    Map<SiteSeason, Long> standing =
        cells.stream().collect(Collectors.groupingBy(TrialCell::at, Collectors.counting()));
    List<TwoWayTable.Cell> complete =
        cells.stream()
            .filter(cell -> standing.get(cell.at()) == entries.size())
            .map(cell -> new TwoWayTable.Cell(cell.entry(), cell.at().toString(), cell.mean()))
            .toList();
    if (complete.isEmpty()) {
      return List.of();
    }
    return TwoWayTable.of(complete).value().map(table -> of(table, better)).orElse(List.of());
  }

  private static List<Steadiness> of(TwoWayTable table, Better better) {
    Answer<List<EntryStability>> measures = EntryStability.of(table, better);
    Answer<JointRegression> lines = JointRegression.of(table);
    if (measures.value().isEmpty() || lines.value().isEmpty()) {
      return List.of();
    }
    double interaction = table.interactionSquares();
    return measures.value().get().stream()
        .map(
            one -> {
              StabilityLine line = lines.value().get().of(one.entry());
              return new Steadiness(
                  one.entry(),
                  line.slope(),
                  line.slopeError(),
                  interaction > 0 ? one.ecovalence() / interaction : 0,
                  one.superiority());
            })
        .sorted(
            (one, other) -> Double.compare(one.shareOfInteraction(), other.shareOfInteraction()))
        .toList();
  }
}
