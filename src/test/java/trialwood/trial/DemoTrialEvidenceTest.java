package trialwood.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.crop.Better;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.lineage.CheckRole;
import trialwood.observation.NoneBecause;
import trialwood.observation.Observations;
import trialwood.observation.Reading;

/** The two trials of the demo nursery, an invented scenario, planted from its own files. */
@TrialGround.OnTrialGround
class DemoTrialEvidenceTest {

  private static final LocalDate GATE_DAY = LocalDate.of(2026, 11, 25);
  private static final Map<String, Better> TRAITS =
      Map.of("BLOOM", Better.HIGHER, "LSREL", Better.LOWER, "DIEBACK", Better.LOWER);

  private @Autowired TrialGround ground;
  private @Autowired TrialPlanting planting;
  private @Autowired TrialRecords records;
  private @Autowired EvidenceSource evidence;
  private @Autowired Observations observations;

  @BeforeEach
  void plant() {
    rows("03-sites").forEach(row -> ground.site(row.get("site"), row.get("name")));
    TRAITS.forEach((code, better) -> ground.trait(code, "", better, 1));
    for (CSVRecord row : rows("60-trials").toList()) {
      UUID trial =
          planting.plan(
              new NewTrial(
                  ground.crop(),
                  row.get("trial"),
                  row.get("name"),
                  row.get("objective"),
                  Long.valueOf(row.get("seed")),
                  Integer.parseInt(row.get("blocks")),
                  Integer.parseInt(row.get("plants_per_plot")),
                  Integer.valueOf(row.get("spacing_mm"))));
      of("61-trial-entries", row)
          .forEach(
              entry ->
                  planting.enter(
                      trial,
                      ground.accession(entry.get("accession")),
                      EntryRole.valueOf(entry.get("role").toUpperCase(Locale.ROOT))));
      of("62-trial-sites", row)
          .forEach(
              site ->
                  planting.standAt(
                      trial, ground.id(site.get("site")), LocalDate.parse(site.get("planted_on"))));
      planting.plant(
          trial,
          of("63-plots", row)
              .map(
                  plot ->
                      new GivenPlot(
                          plot.get("plot"),
                          ground.id(plot.get("site")),
                          ground.accession(plot.get("accession")),
                          Integer.parseInt(plot.get("block")),
                          Integer.valueOf(plot.get("row")),
                          Integer.valueOf(plot.get("column")),
                          Integer.parseInt(plot.get("plants"))))
              .toList(),
          null);
    }
    Set<String> plots = rows("63-plots").map(plot -> plot.get("plot")).collect(Collectors.toSet());
    rows("65-observations")
        .filter(row -> plots.contains(row.get("unit")) && TRAITS.containsKey(row.get("trait")))
        .forEach(row -> ground.see(row.get("unit"), row.get("trait"), row.get("on"), reading(row)));
    rows("64-site-events").filter(row -> !row.get("traits").isEmpty()).forEach(this::report);
    observations.flush();
  }

  @Test
  void kettle_by_site_means_is_likely_between_minus_a_fifth_and_one_and_a_half_weeks() {
    Evidence kettle = ask("trial.against-check", "BLOOM", "A18-01");
    assertThat(kettle.interval().low()).isCloseTo(-0.2, within(0.05));
    assertThat(kettle.interval().high()).isCloseTo(1.4, within(0.05));
    assertThat(kettle.sites()).isEqualTo(3);
    assertThat(kettle.seasons()).isEqualTo(3);
    assertThat(kettle.replicates()).isEqualTo(32);
    assertThat(kettle.comparison()).isEqualTo("+0.6 against CK-1");
    assertThat(kettle.remarks())
        .containsExactly("Left out: Corrow Hill 2025: hail 19 July 2025, 32 plots.");
  }

  @Test
  void candle_gains_by_its_good_sites_no_more_than_it_loses_in_the_cold() {
    Evidence candle = ask("trial.against-check", "BLOOM", "E18-02");
    assertThat(candle.value()).isCloseTo(0.1, within(0.05));
    assertThat(ask("trial.ahead", "BLOOM", "E18-02").value()).isEqualTo(5 / 8.0);
    assertThat(ask("trial.worst", "BLOOM", "E18-02").value()).isCloseTo(-3.5, within(1e-9));
    assertThat(ask("trial.worst", "BLOOM", "E18-02").comparison())
        .isEqualTo("−3.5 against CK-1 at CH 2026");
  }

  @Test
  void ferry_is_ahead_everywhere() {
    assertThat(ask("trial.ahead", "BLOOM", "C18-03").value()).isEqualTo(1);
    assertThat(ask("trial.sites", null, "C18-03").value()).isEqualTo(3);
    assertThat(ask("trial.seasons", null, "C18-03").value()).isEqualTo(3);
  }

  @Test
  void gannet_fails_by_its_worst_winter() {
    Evidence gannet = ask("trial.worst", "DIEBACK", "D18-02");
    assertThat(gannet.value()).isCloseTo(45 - 18, within(1e-9));
  }

  @Test
  void where_the_susceptible_check_stays_clean_nobody_earns_credit() {
    Evidence ferry = ask("trial.relative", "LSREL", "C18-03");
    assertThat(ferry.remarks()).contains("No pressure, no credit: CH 2024, CH 2026.");
    assertThat(ferry.sites()).isEqualTo(2);
    double home = (5.4 / 8.9 + 7.0 / 14.5 + 5.5 / 9.1) / 3;
    double coast = (5.4 / 8.9 + 7.4 / 15.9 + 6.8 / 12.0) / 3;
    assertThat(ferry.value()).isCloseTo((home + coast) / 2, within(1e-9));
    assertThat(ask("trial.relative", "LSREL", "C18-04").value()).isGreaterThan(1.2);
  }

  @Test
  void two_traits_asked_one_after_the_other_do_not_answer_for_each_other() {
    Evidence alone = ask("trial.worst", "DIEBACK", "A18-01");
    ask("trial.against-check", "BLOOM", "A18-01");
    assertThat(ask("trial.relative", "LSREL", "A18-01").value()).isLessThan(1.0);
    assertThat(ask("trial.worst", "DIEBACK", "A18-01").value()).isEqualTo(alone.value());
  }

  @Test
  void the_later_set_is_compared_with_its_own_check_only() {
    Evidence late = ask("trial.against-check", "BLOOM", "F18-01");
    assertThat(late.sites()).isEqualTo(2);
    assertThat(late.seasons()).isEqualTo(2);
  }

  private Evidence ask(String metric, String trait, String entry) {
    UUID accession = ground.id(entry);
    return evidence
        .evidence(
            new Ask(metric, trait == null ? null : ground.id(trait), CheckRole.MARKET),
            Set.of(accession),
            GATE_DAY)
        .get(accession);
  }

  private static Reading reading(CSVRecord row) {
    return row.get("value").isEmpty()
        ? Reading.none(
            NoneBecause.valueOf(row.get("none_because").toUpperCase(Locale.ROOT).replace(' ', '_')))
        : Reading.of(new BigDecimal(row.get("value")));
  }

  private void report(CSVRecord row) {
    records.report(
        new NewSiteEvent(
            row.get("event"),
            ground.id(row.get("site")),
            null,
            LocalDate.parse(row.get("on")),
            SiteEvent.Kind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
            row.get("note"),
            LocalDate.parse(row.get("void_from")),
            LocalDate.parse(row.get("void_until")),
            Stream.of(row.get("traits").split(" "))
                .filter(TRAITS::containsKey)
                .map(ground::id)
                .collect(Collectors.toSet()),
            Set.of(),
            null));
  }

  private static Stream<CSVRecord> of(String sheet, CSVRecord trial) {
    return rows(sheet).filter(row -> row.get("trial").equals(trial.get("trial")));
  }

  private static Stream<CSVRecord> rows(String sheet) {
    try (Reader reader = Files.newBufferedReader(Path.of("demo-data", sheet + ".csv"))) {
      List<CSVRecord> rows =
          CSVFormat.RFC4180
              .builder()
              .setHeader()
              .setSkipHeaderRecord(true)
              .get()
              .parse(reader)
              .getRecords();
      return rows.stream();
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}
