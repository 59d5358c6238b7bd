package trialwood.trial;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.crop.Better;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.lineage.CheckRole;
import trialwood.observation.NoneBecause;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Recorder;
import trialwood.testing.Statements;
import trialwood.unit.Identity;
import trialwood.unit.Tie;

/** A check and two entries in two blocks at two sites, seen in two autumns. */
@TrialGround.OnTrialGround
class SeasonMeansTest {

  private static final LocalDate PLANTED = LocalDate.of(2024, 4, 8);
  private static final LocalDate LATER = LocalDate.of(2026, 1, 1);

  private @Autowired TrialGround ground;
  private @Autowired TrialPlanting planting;
  private @Autowired TrialRecords records;
  private @Autowired SeasonMeans means;
  private @Autowired TrialEvidence evidence;
  private @Autowired Identity identity;
  private @Autowired Recorder recorder;
  private @Autowired Observations observations;
  private @Autowired JdbcClient jdbc;
  private @Autowired EntityManager entities;
  private @Autowired Statements statements;
  private UUID trial;
  private UUID bloom;

  @BeforeEach
  void plant() {
    ground.site("HB", "Home Block");
    ground.site("CH", "Corrow Hill");
    bloom = ground.trait("BLOOM", "weeks", Better.HIGHER, 1);
    trial = ground.trial("T1", 2, "CK-1", "A18-01", "C18-03");
    for (String site : Set.of("HB", "CH")) {
      planting.standAt(trial, ground.id(site), PLANTED);
      ground.plantInOrder(trial, "T1", site, 2, "CK-1", "A18-01", "C18-03");
    }
    // block 2 has half a week more than block 1; Corrow Hill one week less; 2025 one week more
    for (int entry = 1; entry <= 3; entry++) {
      see("HB", entry, "2024-10-14", 6 + entry);
      see("CH", entry, "2024-10-20", 5 + entry);
      see("HB", entry, "2025-10-13", 7 + entry);
    }
  }

  @Test
  void a_mean_is_over_the_plots_of_one_entry_in_one_season_at_one_site() {
    assertThat(mean("HB", 2024, "CK-1")).isEqualTo(7.25);
    assertThat(mean("CH", 2024, "C18-03")).isEqualTo(8.25);
    assertThat(mean("HB", 2025, "A18-01")).isEqualTo(9.25);
  }

  @Test
  void labels_found_exchanged_move_the_records_and_change_none() {
    // the stakes of A18-01 and C18-03 in block 1 at Home Block were exchanged from the start
    for (String[] swap : new String[][] {{"T1-HB-1-2", "C18-03"}, {"T1-HB-1-3", "A18-01"}}) {
      identity.say(
          new Tie(
              ground.plot(swap[0]),
              ground.id(swap[1]),
              PLANTED,
              LocalDate.of(2025, 1, 1),
              "stakes exchanged",
              null,
              LATER,
              recorder.by(null)));
    }
    assertThat(mean("HB", 2024, "A18-01")).isEqualTo((9 + 8.5) / 2);
    assertThat(mean("HB", 2024, "C18-03")).isEqualTo((8 + 9.5) / 2);
    assertThat(mean("HB", 2025, "A18-01")).isEqualTo(9.25);
    assertThat(observations.count()).isEqualTo(18);
  }

  @Test
  void dead_and_not_looked_at_are_counted_and_never_zero() {
    ground.see("T1-CH-1-1", "BLOOM", "2025-10-20", Reading.none(NoneBecause.DEAD));
    ground.see("T1-CH-2-1", "BLOOM", "2025-10-20", 6);
    SeasonMean check = at("CH", 2025, "CK-1");
    assertThat(check.mean()).isEqualTo(6);
    assertThat(check.plots()).isEqualTo(1);
    assertThat(check.without()).isEqualTo(1);
    assertThat(seasons().gaps())
        .extracting(Gap::sentence)
        .containsExactly("Corrow Hill 2025: dead, 1 plot");
  }

  @Test
  void hail_takes_the_named_traits_out_between_its_dates_and_is_named() {
    ground.trait("HEIGHT", "cm", Better.NEITHER, 0);
    ground.see("T1-CH-1-2", "HEIGHT", "2025-10-20", 120);
    see("CH", 1, "2025-06-01", 5);
    see("CH", 1, "2025-10-20", 1);
    see("CH", 2, "2025-10-20", 1);
    hail(Set.of());
    assertThat(at("CH", 2025, "CK-1").mean()).isEqualTo(5.25);
    assertThat(at("CH", 2025, "A18-01").mean()).isNull();
    assertThat(seasons().gaps())
        .extracting(Gap::sentence)
        .containsExactly("Corrow Hill 2025: hail 19 July 2025, 4 plots");
    assertThat(means.of(ground.id("HEIGHT"), Set.of(trial), LATER).cells()).hasSize(1);
  }

  @Test
  void hail_may_take_single_plots_out() {
    see("CH", 1, "2025-10-20", 6);
    hail(Set.of(ground.plot("T1-CH-2-1")));
    assertThat(at("CH", 2025, "CK-1").mean()).isEqualTo(6);
    assertThat(at("CH", 2025, "CK-1").plots()).isEqualTo(1);
  }

  @Test
  void a_site_season_that_was_lost_is_named_even_if_nobody_looked_any_more() {
    hail(Set.of());
    assertThat(seasons().lost()).containsExactly("Corrow Hill 2025: hail 19 July 2025, 6 plots");
    assertThat(answer("trial.against-check", "A18-01").remarks())
        .contains("Left out: Corrow Hill 2025: hail 19 July 2025, 6 plots.");
  }

  @Test
  void a_record_that_was_replaced_is_left_out() {
    ground.see("T1-HB-1-1", "BLOOM", "2024-10-15", 8);
    observations.flush();
    jdbc.sql(
            """
            update observation set supersede_reason = 'misread', supersedes_id =
              (select o.id from observation o
               where o.unit_id = :plot and o.on_date = date '2024-10-14')
            where unit_id = :plot and on_date = date '2024-10-15'
            """)
        .param("plot", ground.plot("T1-HB-1-1"))
        .update();
    assertThat(mean("HB", 2024, "CK-1")).isEqualTo((8 + 7.5) / 2);
  }

  @Test
  void evidence_looks_no_further_than_its_day() {
    assertThat(answer("trial.seasons", "A18-01").value()).isEqualTo(2);
    Evidence then =
        evidence
            .evidence(
                new Ask("trial.seasons", null, null),
                Set.of(ground.id("A18-01")),
                LocalDate.of(2024, 12, 31))
            .get(ground.id("A18-01"));
    assertThat(then.value()).isEqualTo(1);
    assertThat(then.sites()).isEqualTo(2);
    assertThat(then.asOf()).isEqualTo(LocalDate.of(2024, 10, 20));
  }

  @Test
  void an_entry_is_compared_only_with_a_check_of_its_own_trial() {
    UUID other = ground.trial("T2", 1, "CK-9", "F18-01");
    planting.standAt(other, ground.id("HB"), PLANTED);
    ground.plantInOrder(other, "T2", "HB", 1, "F18-01");
    ground.see("T2-HB-1-1", "BLOOM", "2024-10-14", 9);
    observations.flush();
    assertThat(answers(Set.of(ground.id("F18-01")))).isEmpty();
  }

  @Test
  void the_number_of_statements_does_not_grow_with_the_candidates() {
    assertThat(statementsFor("A18-01", "C18-03")).isEqualTo(statementsFor("A18-01")).isPositive();
  }

  private int statementsFor(String... entries) {
    Set<UUID> asked = Stream.of(entries).map(ground::id).collect(Collectors.toSet());
    observations.flush();
    entities.clear();
    return statements.of(() -> assertThat(answers(asked)).hasSize(entries.length));
  }

  private Evidence answer(String metric, String entry) {
    observations.flush();
    Set<UUID> asked = Set.of(ground.id(entry));
    return evidence
        .evidence(new Ask(metric, bloom, CheckRole.MARKET), asked, LATER)
        .get(ground.id(entry));
  }

  private Map<UUID, Evidence> answers(Set<UUID> entries) {
    return evidence.evidence(
        new Ask("trial.against-check", bloom, CheckRole.MARKET), entries, LATER);
  }

  private void hail(Set<UUID> plots) {
    LocalDate day = LocalDate.of(2025, 7, 19);
    records.report(
        new NewSiteEvent(
            "HAIL-25",
            ground.id("CH"),
            trial,
            day,
            SiteEvent.Kind.HAIL,
            "all plots stripped",
            day,
            LocalDate.of(2025, 12, 31),
            Set.of(bloom),
            plots,
            null));
  }

  private void see(String site, int entry, String on, double value) {
    for (int block = 1; block <= 2; block++) {
      ground.see(
          "T1-%s-%d-%d".formatted(site, block, entry), "BLOOM", on, value + (block - 1) * 0.5);
    }
  }

  private double mean(String site, int season, String entry) {
    return at(site, season, entry).mean();
  }

  private SeasonMean at(String site, int season, String entry) {
    return seasons().means().stream()
        .filter(mean -> mean.site().equals(site) && mean.season() == season)
        .filter(mean -> mean.accession().equals(entry))
        .findFirst()
        .orElseThrow();
  }

  private TraitSeasons seasons() {
    observations.flush();
    return means.of(bloom, Set.of(trial), LATER);
  }
}
