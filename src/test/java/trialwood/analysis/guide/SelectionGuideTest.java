package trialwood.analysis.guide;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.StraightLine;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.distinct.ColourDifference;
import trialwood.analysis.distinct.Lab;
import trialwood.analysis.distinct.OverYears;
import trialwood.analysis.growth.DiseaseProgress;
import trialwood.analysis.growth.GrowthCurve;
import trialwood.analysis.growth.HorsfallBarratt;
import trialwood.analysis.growth.Reading;
import trialwood.analysis.selection.BestOfMany;
import trialwood.analysis.selection.FamilyCount;
import trialwood.analysis.selection.FamilyRate;
import trialwood.analysis.selection.FamilyRates;
import trialwood.analysis.selection.IndexTraits;
import trialwood.analysis.selection.Pedigree;
import trialwood.analysis.selection.Plant;
import trialwood.analysis.selection.Relationships;
import trialwood.analysis.selection.Response;
import trialwood.analysis.selection.SelectionIndex;
import trialwood.analysis.selection.Truncation;

/** Growth, disease, selection, distinctness. */
class SelectionGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void growth() {
    GrowthCurve curve =
        GrowthCurve.of(
            List.of(
                new Reading(0, 12), new Reading(2, 15), new Reading(4, 20), new Reading(6, 26)));
    StraightLine line = curve.line().value().orElseThrow();
    GUIDE.states(
        "12, 15, 20, 26 cm in weeks 0, 2, 4, 6: %.2f cm a week by the ends, %.2f ± %.2f by the line;"
            + " relative rate %.3f a week.",
        curve.absoluteRate().value().orElseThrow(),
        line.slope(),
        line.slopeError().value().orElseThrow(),
        curve.relativeRate().value().orElseThrow());
  }

  @Test
  void disease() {
    DiseaseProgress progress =
        DiseaseProgress.of(
                List.of(
                    new Reading(0, 0),
                    new Reading(7, 10),
                    new Reading(14, 30),
                    new Reading(21, 50)))
            .value()
            .orElseThrow();
    GUIDE.states(
        "0, 10, 30, 50 %% on days 0, 7, 14, 21: AUDPC %.0f, mean severity %.1f %%, AUDPS %.0f. Grade"
            + " 6 stands for %.1f %%.",
        progress.area(),
        progress.meanSeverity(),
        progress.stairs(),
        new HorsfallBarratt(6).midpoint());
  }

  @Test
  void gain_from_selection() {
    GUIDE.states(
        "Keeping 5 %% of very many: i = %.3f; 5 of 100: %.3f; 1 of 5: %.3f. With h² = 0.35 and σ ="
            + " 6.2 cm, keeping 5 %% gains %.1f cm.",
        Truncation.keeping(0.05).intensity(),
        new BestOfMany(5, 100).intensity(),
        new BestOfMany(1, 5).intensity(),
        Response.keeping(0.05, 0.35, 6.2).response());
    BestOfMany best = new BestOfMany(1, 40);
    GUIDE.states(
        "The best of 40 seedlings, spread 10 days, of which 30 %% is real, looks %.0f days better"
            + " than the mean and truly is %.0f days better.",
        best.apparentLead(10), best.trueLead(10, 0.3));
  }

  @Test
  void family_rates() {
    int[][] counts = {{2, 7}, {5, 6}, {2, 21}, {0, 6}, {14, 30}, {9, 12}};
    var families = new ArrayList<FamilyCount>();
    for (int[] count : counts) {
      families.add(new FamilyCount("F" + families.size(), count[0], count[1]));
    }
    FamilyRates rates = FamilyRates.byLikelihood(families).value().orElseThrow();
    FamilyRate second = rates.of("F1");
    GUIDE.states(
        "mean of all %.2f, likeness %.2f; the family with 5 of 6 is believed at %.2f, not %.2f, 95"
            + " %% interval %.2f to %.2f.",
        rates.mean(),
        rates.likeness(),
        second.mean(),
        second.count().share(),
        second.interval(0.95).low(),
        second.interval(0.95).high());
  }

  @Test
  void an_index_of_two_traits() {
    SelectionIndex index =
        new IndexTraits(new double[][] {{120, 18}, {18, 36}}, new double[][] {{42, 9}, {9, 10}})
            .forWorth(0.4, 1.2);
    GUIDE.states(
        "worth 0.4 and 1.2: weights %.3f and %.3f, accuracy %.2f.",
        index.weights()[0], index.weights()[1], index.accuracy());
  }

  @Test
  void pedigrees() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                Plant.founder("A"),
                Plant.founder("B"),
                Plant.selfed("S1", "A"),
                Plant.selfed("S2", "S1"),
                new Plant("sib", "A", "B"),
                new Plant("sister", "A", "B"),
                new Plant("inbred", "sib", "sister")));
    GUIDE.states(
        "A plant selfed, its offspring selfed again: F %.2f, then %.2f. Full sibs of unrelated"
            + " parents are related by %.2f; their offspring has F = %.2f.",
        pedigree.inbreeding("S1"),
        pedigree.inbreeding("S2"),
        Relationships.of(pedigree, "sib").to("sister"),
        pedigree.inbreeding("inbred"));
  }

  @Test
  void distinctness_over_years() {
    // the table of OverYearsTest, by its mean square; three columns are all that the table gives
    TwoWayTable threeYears =
        TwoWayTable.of(
                List.of(
                    new TwoWayTable.Cell("R1", "1", 38),
                    new TwoWayTable.Cell("R1", "2", 41),
                    new TwoWayTable.Cell("R1", "3", 35),
                    new TwoWayTable.Cell("C2", "1", 72),
                    new TwoWayTable.Cell("C2", "2", 79),
                    new TwoWayTable.Cell("C2", "3", 68)))
            .value()
            .orElseThrow();
    GUIDE.states(
        "14 ryegrass varieties over 3 years, MS 2.54 on 26 df: LSD at 1 %% is %.1f days.",
        OverYears.longTerm(threeYears, 2.54, 26).leastDifference(0.01));
  }

  @Test
  void colour_difference() {
    Lab one = Lab.ofSrgb("#C7506B");
    Lab other = Lab.ofSrgb("#D4607A");
    GUIDE.states(
        "#C7506B and #D4607A: ΔE*ab %.1f, ΔE₀₀ %.1f.",
        ColourDifference.e76(one, other), ColourDifference.e2000(one, other));
  }
}
