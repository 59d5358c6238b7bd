package trialwood.analysis.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.trial.CheckComparison.MissingSiteSeason;

/** On the invented bloom weeks of the demo: demo data, not a check against the world outside. */
class CheckComparisonTest {

  private static final List<TrialCell> BLOOM_WEEKS =
      bloomWeeks(
          """
          Kettle 8.2  9.8 7.3  9.7 10.5 10.1 11.4  8.9
          Pewter 7.4  8.4 6.4  9.3 10.7  9.6 10.4  7.6
          Ferry 11.1 11.2 8.3 11.1 12.6 11.8 12.7 10.1
          Harbor 9.6 10.5 8.0 10.9 11.0 11.2 11.3  9.0
          Gannet 9.1 10.7 6.9 11.0 13.2 11.1 12.5  8.2
          Candle 8.2 12.8 3.1  9.7 13.9  9.4 14.3  4.3
          CK-1   8.6  8.8 6.5  9.2 10.6  9.2 10.8  7.8
          """);

  @Test
  void sites_weigh_equally_and_their_variation_is_the_error() {
    CheckComparison kettle = againstCheck("Kettle");
    Interval interval = kettle.onAverage().value().orElseThrow().interval(0.95);
    assertThat(interval.low()).isCloseTo(-0.2, within(0.05));
    assertThat(interval.high()).isCloseTo(1.4, within(0.05));
    assertThat(kettle.onAverage().value().orElseThrow().degreesOfFreedom()).isEqualTo(2);
    assertThat(kettle.sites())
        .extracting(CheckComparison.SiteDifference::seasons)
        .containsExactly(2, 3, 3);
  }

  @Test
  void a_site_that_lost_a_season_keeps_its_weight() {
    CheckComparison candle = againstCheck("Candle");
    assertThat(candle.average()).isCloseTo(0.1, within(0.05));
    assertThat(candle.plainReading().value().orElseThrow().estimate())
        .isCloseTo(0.53, within(0.005));
  }

  @Test
  void the_season_lost_to_hail_is_named() {
    assertThat(againstCheck("Ferry").missing())
        .containsExactly(
            new MissingSiteSeason(new SiteSeason("CH", 2025), "no value for Ferry and CK-1"));
  }

  @Test
  void who_is_missing_is_named() {
    var cells = new ArrayList<>(BLOOM_WEEKS);
    cells.removeIf(
        cell ->
            cell.entry().equals("Ferry") && cell.at().equals(new SiteSeason("HB", 2024))
                || cell.entry().equals("CK-1") && cell.at().equals(new SiteSeason("SG", 2025)));
    assertThat(
            CheckComparison.of(cells, "Ferry", "CK-1", Better.HIGHER)
                .value()
                .orElseThrow()
                .missing())
        .contains(
            new MissingSiteSeason(new SiteSeason("HB", 2024), "no value for Ferry"),
            new MissingSiteSeason(new SiteSeason("SG", 2025), "no value for CK-1"));
  }

  @Test
  void a_tie_is_not_ahead_either_way() {
    List<TrialCell> tied =
        List.of(
            new TrialCell("Kettle", "HB", 2024, 8.6, 4), new TrialCell("CK-1", "HB", 2024, 8.6, 4));
    for (Better better : Better.values()) {
      assertThat(CheckComparison.of(tied, "Kettle", "CK-1", better).value().orElseThrow().ahead())
          .isZero();
    }
  }

  @Test
  void only_planned_site_seasons_can_be_missing() {
    var planned = new ArrayList<>(BLOOM_WEEKS.stream().map(TrialCell::at).distinct().toList());
    assertThat(
            CheckComparison.of(BLOOM_WEEKS, planned, "Ferry", "CK-1", Better.HIGHER)
                .value()
                .orElseThrow()
                .missing())
        .isEmpty();
    planned.add(new SiteSeason("HB", 2027));
    assertThat(
            CheckComparison.of(BLOOM_WEEKS, planned, "Ferry", "CK-1", Better.HIGHER)
                .value()
                .orElseThrow()
                .missing())
        .extracting(MissingSiteSeason::at)
        .containsExactly(new SiteSeason("HB", 2027));
  }

  @ParameterizedTest
  @CsvSource({
    "Ferry, 2.17, 0.31, 8, 1.8",
    "Gannet, 1.40, 0.85, 8, 0.4",
    "Harbor, 1.25, 0.58, 8, 0.4",
    "Kettle, 0.55, 0.54, 6, -0.4",
    "Candle, 0.53, 2.96, 5, -3.5",
    "Pewter, -0.21, 0.48, 3, -1.2"
  })
  void the_plain_reading_counts_and_worst_case_stand_beside_it(
      String entry, double mean, double sd, int ahead, double worst) {
    CheckComparison comparison = againstCheck(entry);
    StudentBelief plain = comparison.plainReading().value().orElseThrow();
    assertThat(plain.estimate()).isCloseTo(mean, within(0.0051));
    assertThat(plain.standardError() * Math.sqrt(8)).isCloseTo(sd, within(0.0051));
    assertThat(comparison.ahead()).isEqualTo(ahead);
    assertThat(comparison.worst().difference()).isCloseTo(worst, within(1e-9));
    assertThat(comparison.siteSeasons()).hasSize(8);
  }

  @Test
  void a_new_site_is_less_sure_than_the_average() {
    CheckComparison gannet = againstCheck("Gannet");
    StudentBelief average = gannet.onAverage().value().orElseThrow();
    StudentBelief next = gannet.inNewSite().value().orElseThrow();
    // with k = 3 sites s √(1 + 1/k) is twice s √(1/k)
    assertThat(next.standardError()).isCloseTo(2 * average.standardError(), within(1e-12));
    assertThat(gannet.chanceBetter().value().orElseThrow())
        .isCloseTo(
            TDistribution.of(2).cumulativeProbability(average.estimate() / average.standardError()),
            within(1e-12))
        .isGreaterThan(gannet.chanceBetterInNewSite().value().orElseThrow());
  }

  @Test
  void where_lower_is_better_the_same_numbers_read_the_other_way() {
    CheckComparison higher = againstCheck("Kettle");
    CheckComparison lower =
        CheckComparison.of(BLOOM_WEEKS, "Kettle", "CK-1", Better.LOWER).value().orElseThrow();
    assertThat(lower.average()).isEqualTo(higher.average());
    assertThat(lower.chanceBetter().value().orElseThrow())
        .isCloseTo(1 - higher.chanceBetter().value().orElseThrow(), within(1e-12));
    assertThat(lower.ahead()).isEqualTo(2);
    assertThat(lower.worst().difference()).isCloseTo(1.1, within(1e-9));
  }

  @Test
  void one_site_gives_a_difference_but_no_interval() {
    List<TrialCell> one =
        BLOOM_WEEKS.stream().filter(cell -> cell.at().site().equals("HB")).toList();
    CheckComparison comparison =
        CheckComparison.of(one, "Ferry", "CK-1", Better.HIGHER).value().orElseThrow();
    assertThat(comparison.average()).isCloseTo((2.5 + 1.9 + 2.6) / 3, within(1e-12));
    assertThat(comparison.onAverage().lack())
        .hasValue(
            "One site only: how the difference varies from site to site cannot be judged from it.");
    assertThat(comparison.chanceBetter().value()).isEmpty();
    assertThat(comparison.inNewSite().value()).isEmpty();
  }

  @Test
  void new_names_and_another_order_change_nothing() {
    var renamed = new ArrayList<TrialCell>();
    for (TrialCell cell : BLOOM_WEEKS) {
      renamed.add(new TrialCell("z" + cell.entry(), cell.at(), cell.mean(), cell.plots()));
    }
    Collections.shuffle(renamed, new Random(3));
    CheckComparison after =
        CheckComparison.of(renamed, "zKettle", "zCK-1", Better.HIGHER).value().orElseThrow();
    assertThat(after.onAverage()).isEqualTo(againstCheck("Kettle").onAverage());
    assertThat(after.siteSeasons()).isEqualTo(againstCheck("Kettle").siteSeasons());
  }

  @Test
  void entries_that_never_stood_beside_the_check_are_not_compared() {
    var cells = new ArrayList<>(BLOOM_WEEKS);
    cells.add(new TrialCell("Moth", "HB", 2027, 10.2, 4));
    assertThat(CheckComparison.of(cells, "Moth", "CK-1", Better.HIGHER).lack())
        .hasValue("Moth and CK-1 have no site-season in common.");
  }

  @Test
  void an_entry_is_not_its_own_check_and_has_one_mean_a_site_season() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CheckComparison.of(BLOOM_WEEKS, "CK-1", "CK-1", Better.HIGHER));
    var twice = new ArrayList<>(BLOOM_WEEKS);
    twice.add(BLOOM_WEEKS.get(0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CheckComparison.of(twice, "Kettle", "CK-1", Better.HIGHER))
        .withMessage("Kettle has two means at HB 2024.");
  }

  private static CheckComparison againstCheck(String entry) {
    return CheckComparison.of(BLOOM_WEEKS, entry, "CK-1", Better.HIGHER).value().orElseThrow();
  }

  private static List<TrialCell> bloomWeeks(String table) {
    List<SiteSeason> columns =
        List.of(
            new SiteSeason("HB", 2024),
            new SiteSeason("SG", 2024),
            new SiteSeason("CH", 2024),
            new SiteSeason("HB", 2025),
            new SiteSeason("SG", 2025),
            new SiteSeason("HB", 2026),
            new SiteSeason("SG", 2026),
            new SiteSeason("CH", 2026));
    var cells = new ArrayList<TrialCell>();
    for (String line : table.lines().toList()) {
      String[] words = line.trim().split("\\s+");
      for (int i = 0; i < columns.size(); i++) {
        cells.add(new TrialCell(words[0], columns.get(i), Double.parseDouble(words[i + 1]), 4));
      }
    }
    return List.copyOf(cells);
  }
}
