package trialwood.analysis.guide;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Interval;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.stability.Ammi;
import trialwood.analysis.stability.EntryStability;
import trialwood.analysis.stability.JointRegression;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.EntryMeans;
import trialwood.analysis.trial.TrialCell;

/** Sites and seasons. */
class SitesGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void entries_over_site_seasons() {
    List<TrialCell> cells =
        List.of(
            new TrialCell("A", "north", 2024, 10, 4),
            new TrialCell("B", "north", 2024, 8, 4),
            new TrialCell("C", "north", 2024, 9, 4),
            new TrialCell("A", "south", 2024, 14, 4),
            new TrialCell("B", "south", 2024, 11, 4),
            new TrialCell("C", "south", 2024, 13, 4),
            new TrialCell("A", "north", 2025, 9, 4),
            new TrialCell("B", "north", 2025, 8, 4));
    EntryMeans fit = EntryMeans.of(cells).value().orElseThrow();
    GUIDE.states(
        "C missed the poor season; its raw mean 11.0 becomes %.1f, with a standard error of %.2f"
            + " on %d df; A leads C by %.1f.",
        fit.of("C").mean().estimate(),
        fit.of("C").mean().standardError(),
        fit.degreesOfFreedom(),
        fit.difference("A", "C").estimate());
  }

  @Test
  void a_candidate_against_the_check_over_sites() {
    double[][] differences = {{-0.4, 0.5, 0.9}, {1.0, -0.1, 0.6}, {0.8, 1.1}};
    String[] sites = {"HB", "SG", "CH"};
    int[][] seasons = {{2024, 2025, 2026}, {2024, 2025, 2026}, {2024, 2026}};
    var cells = new ArrayList<TrialCell>();
    for (int i = 0; i < sites.length; i++) {
      for (int j = 0; j < differences[i].length; j++) {
        cells.add(new TrialCell("Kettle", sites[i], seasons[i][j], 9 + differences[i][j], 4));
        cells.add(new TrialCell("CK-1", sites[i], seasons[i][j], 9, 4));
      }
    }
    CheckComparison kettle =
        CheckComparison.of(cells, "Kettle", "CK-1", Better.HIGHER).value().orElseThrow();
    Interval interval = kettle.onAverage().value().orElseThrow().interval(0.95);
    GUIDE.states(
        "On average %+.2f weeks, 95 %% interval %.2f to %.2f on 2 df; chance better on average"
            + " %.2f, in a new site %.2f; ahead in %d of %d, worst %s with %.1f.",
        kettle.average(),
        interval.low(),
        interval.high(),
        kettle.chanceBetter().value().orElseThrow(),
        kettle.chanceBetterInNewSite().value().orElseThrow(),
        kettle.ahead(),
        kettle.siteSeasons().size(),
        kettle.worst().at(),
        kettle.worst().difference());
    GUIDE.states(
        "Missing: %s, %s.", kettle.missing().get(0).at(), kettle.missing().get(0).reason());
  }

  @Test
  void steadiness() {
    double[][] means = {{8, 10, 12, 14}, {10, 10, 11, 11}, {6, 9, 13, 16}, {8, 11, 10, 13}};
    var cells = new ArrayList<TwoWayTable.Cell>();
    for (int i = 0; i < means.length; i++) {
      for (int j = 0; j < means[i].length; j++) {
        cells.add(new TwoWayTable.Cell("ABCD".substring(i, i + 1), "P" + j, means[i][j]));
      }
    }
    TwoWayTable table = TwoWayTable.of(cells).value().orElseThrow();
    JointRegression lines = JointRegression.of(table).value().orElseThrow();
    List<EntryStability> measures = EntryStability.of(table, Better.HIGHER).value().orElseThrow();
    GUIDE.states(
        "slope of A %.2f, of B %.2f, of C %.2f; ecovalence of A %.2f, of B %.2f, of D %.2f;"
            + " superiority of A %.2f, of C %.2f.",
        lines.of("A").slope(),
        lines.of("B").slope(),
        lines.of("C").slope(),
        measures.get(0).ecovalence(),
        measures.get(1).ecovalence(),
        measures.get(3).ecovalence(),
        measures.get(0).superiority(),
        measures.get(2).superiority());
    GUIDE.states(
        "The first axis of the table above carries %.0f %% of the interaction.",
        100 * Ammi.of(table, 1).value().orElseThrow().axes().get(0).share());
  }
}
