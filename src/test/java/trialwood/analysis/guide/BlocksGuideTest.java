package trialwood.analysis.guide;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.AdjustedMeans;
import trialwood.analysis.means.AnovaTable;
import trialwood.analysis.means.CheckDifferences;
import trialwood.analysis.means.EqualSpread;
import trialwood.analysis.means.Groups;
import trialwood.analysis.means.KruskalWallis;
import trialwood.analysis.means.LinearModel;
import trialwood.analysis.means.PairwiseDifferences;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.PlotValues;
import trialwood.analysis.means.SampleDifference;

/** Plants of a lot and entries in blocks. */
class BlocksGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void plants_beside_a_check() {
    PlantSample candidate = PlantSample.of(412, 398, 441, 405, 420, 389);
    PlantSample check = PlantSample.of(380, 402, 371, 395, 388, 366);
    SampleDifference difference = SampleDifference.between(candidate, check).value().orElseThrow();
    GUIDE.states(
        "Candidate 412, 398, 441, 405, 420, 389 mm: mean %.0f mm, coefficient of variation %.1f %%.",
        candidate.mean(), 100 * candidate.cv().value().orElseThrow());
    Interval interval = difference.interval(0.95);
    GUIDE.states(
        "Against 380, 402, 371, 395, 388, 366 mm: %+.0f mm, 95 %% interval %.0f to %.0f mm on %.0f"
            + " df, chance of being taller %.3f.",
        difference.mean(),
        interval.low(),
        interval.high(),
        difference.difference().degreesOfFreedom(),
        difference.chanceAtLeast(0));
  }

  @Test
  void entries_in_blocks() {
    AdjustedMeans means = inBlocks().means("entry");
    AnovaTable.Line line = inBlocks().adjusted().line("entry");
    StudentBelief fourth = means.of("H19").value().orElseThrow();
    Interval interval = fourth.interval(0.95);
    GUIDE.states(
        "H19 has no plot in the poor block 4; its raw mean of %.1f cm becomes %.1f, with a standard"
            + " error of %.1f on %d df and a 95 %% interval of %.0f to %.0f cm.",
        Groups.of(hedge(), "entry").summaries().get(3).mean().value().orElseThrow(),
        fourth.estimate(),
        fourth.standardError(),
        means.residualDf(),
        interval.low(),
        interval.high());
    GUIDE.states(
        "Entries: F = %.1f on %d and %d df, p = %.4f; coefficient of variation %.1f %%.",
        line.f(),
        line.df(),
        inBlocks().residualDf(),
        line.p(),
        inBlocks().cvPercent().value().orElseThrow());
  }

  @Test
  void all_pairs_and_all_against_the_check() {
    AdjustedMeans means = inBlocks().means("entry");
    PairwiseDifferences pairs = means.pairs();
    PairwiseDifferences.Pair pair = pairs.pair("H07", "CK-1");
    CheckDifferences check = means.against("CK-1").value().orElseThrow();
    CheckDifferences.Entry entry = check.entry("H07");
    GUIDE.states(
        "H07 less CK-1: %+.2f cm, standard error %.2f, least significant difference %.2f. p for this"
            + " pair alone %.3f; for all six pairs %.3f by Tukey, %.3f by Holm; for the three against"
            + " the check %.3f by Dunnett.",
        pair.difference().estimate(),
        pair.difference().standardError(),
        pair.leastSignificantDifference(0.05),
        pair.p(),
        pairs.tukeyP(pair),
        pair.holm(),
        check.twoSidedP(entry));
    Interval tukey = pairs.tukeyInterval(pair, 0.95);
    Interval dunnett = check.interval(entry, 0.95);
    GUIDE.states(
        "Its 95 %% interval is %.1f to %.1f cm among all pairs and %.1f to %.1f cm against the check.",
        tukey.low(), tukey.high(), dunnett.low(), dunnett.high());
  }

  @Test
  void spread_and_ranks_of_groups() {
    Groups groups = Groups.of(hedge(), "entry");
    EqualSpread.ByF spread = EqualSpread.brownForsythe(groups).value().orElseThrow();
    KruskalWallis ranks = KruskalWallis.of(groups).value().orElseThrow();
    GUIDE.states(
        "The same plots without their blocks: Brown–Forsythe F = %.2f on %d and %d df, p = %.2f;"
            + " Kruskal–Wallis H = %.1f on %d df, p = %.3f.",
        spread.f(), spread.df1(), spread.df2(), spread.p(), ranks.h(), ranks.df(), ranks.p());
  }

  private static PlotValues hedge() {
    List<String> entries = List.of("CK-1", "H07", "H12", "H19");
    return PlotValues.of(41, 44, 52, 45, 38, 49, 45, 42, 46, 47, 55, 47, 35, 41, 40, Double.NaN)
        .by("block", IntStream.range(0, 16).mapToObj(plot -> "block " + (plot / 4 + 1)).toList())
        .by("entry", IntStream.range(0, 16).mapToObj(plot -> entries.get(plot % 4)).toList());
  }

  private static LinearModel inBlocks() {
    return LinearModel.inBlocks(hedge(), "block", "entry").value().orElseThrow();
  }
}
