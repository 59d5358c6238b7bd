package trialwood.demo;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.summingInt;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static trialwood.demo.Sheet.rowsOf;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo nursery as one record: sheets as agreed, codes that lead somewhere, dates in order. */
class DemoRecordTest {

  private static final String SHEETS =
      """
      01-crops: crop botanical_name common_name woody rooting_from_days rooting_to_days
        look_days check_floor_percent denomination_class root_kill_celsius
      02-container-classes: class lowest_litres highest_litres remark
      03-sites: site name place hardiness_zone latitude longitude cooperator
      04-people: initials name duty
      05-traits: crop trait name kind unit lowest highest decimals better window_from
        window_to youngest_age taken_on part described
      06-trait-steps: crop trait step meaning scale
      07-accessions: accession crop kind talk_name seed_parent pollen_parent pollination
        origin description used_as_parent aliases
      08-checks: crop accession role
      09-filing-routes: route name territory law home_years elsewhere_years
        elsewhere_years_tree started_by priority_months term_years term_years_tree
        evidence
      10-gate-policies: crop policy in_force_from gate criterion label kind need metric
        trait check direction advance_line advance_chance discard_line discard_chance
        least_units least_replicates least_sites least_seasons discard_occasions
        discard_occasions_outstanding allowed_percent why
      11-benches: bench name house places note
      11-short-codes: short_code label
      12-houses: house propagates note
      13-house-sprays: house ended_at re_entry_hours product rate area against licence by
        asked checked
      14-house-readings: house read_at air_celsius medium_celsius humidity shade
        mist_seconds mist_interval_seconds note by asked checked
      15-tray-likeness: on prior reason by
      20-populations: population crop name site planted_on rows positions_per_row
        in_row_mm between_rows_mm note
      21-field-tags: accession population row position on by seen talk_name seed_parent
        description outstanding
      22-candidate-events: accession on event note by
      30-runs: run crop from to check bench mist bottom_heat_c cutting length_mm wounding
        hormone form ppm dip_s medium crew note
      31-batches: batch run source wounding hormone form ppm note
      32-trays: tray batch accession cells stuck_on stuck block place by
      33-tray-passages: from to on number begins by note
      33-tray-rulings: tray on counts reason by
      34-looks: tray on lifted rooted alive dead_removed by note
      35-taken-out: tray on number rooted fate by note
      36-final-counts: tray on rooted alive_without_roots dead taken_out root_score by
        note
      37-weanings: tray last_mist on alive wilted shock by note
      38-bench-blocks: run block bench
      39-bench-plans: run block place accession nth seed
      39-tray-places: tray from bench place reason by
      40-lots: lot accession class litres on number yard by note
      41-lot-sources: lot source number
      42-lot-losses: lot on number reason by
      43-lot-outgoings: lot on number way to_whom agreement purpose by
      44-lot-counts: lot on alive saleable by note
      45-plants: plant lot number from
      46-plant-moves: plant lot on by
      47-lot-care: lot on kind cut_to_cm house lowest_celsius dieback_percent by asked
        checked
      48-lot-grades: lot on a b c root_ball by asked checked
      49-stock-plants: plant accession number since place batch source_unit note by
      50-stock-events: plant on kind place agent result note by
      50-ties: unit accession from until reason evidence said_on by correction
      51-questions: unit on question by answer correction
      60-trials: trial crop name objective seed blocks plants_per_plot spacing_mm
      61-trial-entries: trial accession role
      62-trial-sites: trial site planted_on
      63-plots: plot trial site accession block row column plants
      64-site-events: event site trial on kind note void_from void_until traits plots by
      65-observations: unit trait on value none_because by note
      70-disclosures: accession on kind territory number agreement to_whom learned_on note
        by
      71-filings: accession route on number note by
      72-attestations: accession criterion on holds expires_on note by
      73-decisions: accession gate on choice hold_until reason by
      80-notes: kind code on words by
      """;

  /** Sheets of which the demo has no row. */
  private static final Set<String> UNUSED = Set.of("11-short-codes", "33-tray-passages");

  private static final List<String> GATES =
      List.of("field", "propagation", "container-1", "container-2", "trial", "dossier");

  private static final Map<String, Set<String>> LABELS_BY_KIND =
      Map.of(
          "position", Set.copyOf(positions()),
          "lot", labelsOf("40-lots", "lot"),
          "plant", labelsOf("45-plants", "plant"),
          "plot", labelsOf("63-plots", "plot"));

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  @Test
  void there_are_these_sheets_and_no_others() throws IOException {
    try (var files = Files.list(Sheet.FOLDER)) {
      var names =
          files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".csv")).toList();
      assertThat(names)
          .containsExactlyInAnyOrderElementsOf(
              columnsBySheet().keySet().stream().map(s -> s + ".csv").toList());
    }
  }

  @ParameterizedTest
  @MethodSource("sheetNames")
  void a_sheet_has_its_columns_and_full_rows(String name) {
    var sheet = Sheet.read(name);
    assertThat(sheet.header()).isEqualTo(columnsBySheet().get(name));
    assertThat(sheet.rows()).allMatch(CSVRecord::isConsistent);
    assertThat(sheet.rows().isEmpty()).isEqualTo(UNUSED.contains(name));
  }

  @ParameterizedTest(name = "{0}.{1} is a {2}.{3}")
  @CsvSource(
      textBlock =
          """
          06-trait-steps, trait, 05-traits, trait
          08-checks, accession, 07-accessions, accession
          10-gate-policies, trait, 05-traits, trait
          10-gate-policies, check, 08-checks, role
          20-populations, site, 03-sites, site
          21-field-tags, population, 20-populations, population
          21-field-tags, seed_parent, 07-accessions, accession
          22-candidate-events, accession, 21-field-tags, accession
          30-runs, check, 07-accessions, accession
          31-batches, run, 30-runs, run
          32-trays, batch, 31-batches, batch
          33-tray-rulings, tray, 32-trays, tray
          34-looks, tray, 32-trays, tray
          35-taken-out, tray, 32-trays, tray
          36-final-counts, tray, 32-trays, tray
          37-weanings, tray, 32-trays, tray
          40-lots, class, 02-container-classes, class
          41-lot-sources, lot, 40-lots, lot
          44-lot-counts, lot, 40-lots, lot
          42-lot-losses, lot, 40-lots, lot
          43-lot-outgoings, lot, 40-lots, lot
          45-plants, lot, 40-lots, lot
          46-plant-moves, plant, 45-plants, plant
          46-plant-moves, lot, 40-lots, lot
          61-trial-entries, trial, 60-trials, trial
          62-trial-sites, trial, 60-trials, trial
          62-trial-sites, site, 03-sites, site
          63-plots, site, 62-trial-sites, site
          64-site-events, site, 03-sites, site
          64-site-events, trial, 60-trials, trial
          65-observations, trait, 05-traits, trait
          71-filings, route, 09-filing-routes, route
          72-attestations, criterion, 10-gate-policies, criterion
          73-decisions, gate, 10-gate-policies, gate
          """)
  void a_code_leads_somewhere(String sheet, String column, String target, String code) {
    var known = rowsOf(target).stream().map(r -> r.get(code)).collect(toSet());
    assertThat(rowsOf(sheet).stream().map(r -> r.get(column)).filter(c -> !c.isEmpty()))
        .isSubsetOf(known);
  }

  @ParameterizedTest
  @CsvSource({
    "32-trays",
    "40-lots",
    "50-ties",
    "61-trial-entries",
    "63-plots",
    "70-disclosures",
    "71-filings",
    "72-attestations",
    "73-decisions"
  })
  void an_accession_is_known_or_was_tagged(String sheet) {
    var known =
        Stream.concat(rowsOf("07-accessions").stream(), rowsOf("21-field-tags").stream())
            .map(r -> r.get("accession"))
            .collect(toSet());
    assertThat(rowsOf(sheet).stream().map(r -> r.get("accession"))).isSubsetOf(known);
  }

  @ParameterizedTest
  @MethodSource("sheetNames")
  void whoever_signs_is_one_of_the_people(String name) {
    var people = rowsOf("04-people").stream().map(p -> p.get("initials")).collect(toSet());
    var sheet = Sheet.read(name);
    if (sheet.header().contains("by")) {
      assertThat(sheet.rows().stream().map(r -> r.get("by"))).isSubsetOf(people);
    }
  }

  @Test
  void a_label_is_given_once() {
    assertThat(labels()).doesNotHaveDuplicates();
  }

  @Test
  void whatever_is_observed_tied_or_potted_from_has_a_label() {
    var known = new HashSet<>(labels());
    assertThat(rowsOf("65-observations").stream().map(o -> o.get("unit"))).isSubsetOf(known);
    assertThat(rowsOf("50-ties").stream().map(t -> t.get("unit"))).isSubsetOf(known);
    assertThat(rowsOf("41-lot-sources").stream().map(s -> s.get("source"))).isSubsetOf(known);
  }

  @Test
  void twenty_four_candidates_stand_on_positions_of_their_own() {
    var tags = rowsOf("21-field-tags");
    var population = rowsOf("20-populations").get(0);

    assertThat(tags).hasSize(24);
    assertThat(positions()).doesNotHaveDuplicates().contains("P18/34/107");
    for (var tag : tags) {
      assertThat(count(tag, "row")).isBetween(1, count(population, "rows"));
      assertThat(count(tag, "position"))
          .isBetween(1, count(population, "positions_per_row"))
          .isNotIn(60, 120);
    }
    assertThat(tags.stream().collect(toMap(t -> t.get("on").substring(0, 4), t -> 1, Integer::sum)))
        .isEqualTo(Map.of("2020", 4, "2021", 11, "2022", 9));
  }

  @Test
  void an_observation_has_a_value_within_its_trait_or_a_reason_for_none() {
    var traits = rowsOf("05-traits").stream().collect(toMap(t -> t.get("trait"), t -> t));
    for (var o : rowsOf("65-observations")) {
      var value = o.get("value");
      var trait = traits.get(o.get("trait"));
      assertThat(value.isEmpty()).as("%s", o).isNotEqualTo(o.get("none_because").isEmpty());
      if (!value.isEmpty() && !trait.get("lowest").isEmpty()) {
        assertThat(new BigDecimal(value))
            .as("%s", o)
            .isBetween(new BigDecimal(trait.get("lowest")), new BigDecimal(trait.get("highest")));
      }
      assertThat(o.get("on").substring(5))
          .as("window of %s", o)
          .isBetween(trait.get("window_from"), trait.get("window_to"));
      assertThat(List.of(trait.get("taken_on").split(" "))).as("%s", o).contains(kindOf(o));
    }
  }

  @Test
  void every_step_of_a_score_is_described() {
    var steps =
        rowsOf("06-trait-steps").stream()
            .collect(groupingBy(s -> s.get("trait"), mapping(s -> count(s, "step"), toList())));
    rowsOf("05-traits").stream()
        .filter(t -> t.get("kind").equals("score"))
        .forEach(
            t ->
                assertThat(steps.get(t.get("trait")))
                    .as(t.get("trait"))
                    .startsWith(count(t, "lowest"))
                    .endsWith(count(t, "highest"))
                    .hasSize(count(t, "highest") - count(t, "lowest") + 1));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({"#1, 2021, 50", "#1, 2022, 201", "#1, 2023, 122"})
  void as_many_first_pots_as_the_scenario_says(String size, String year, int pots) {
    assertThat(pottedIn(size, year)).isEqualTo(pots);
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({"#3, 2022, 12", "#3, 2023, 60", "#3, 2024, 24"})
  void as_many_larger_pots_as_the_scenario_says(String size, String year, int pots) {
    assertThat(pottedIn(size, year)).isEqualTo(pots);
  }

  @Test
  void a_lot_counts_what_was_potted_less_what_was_lost_or_left() {
    var losses = rowsOf("42-lot-losses");
    var outgoings = rowsOf("43-lot-outgoings");
    Map<String, Integer> potted = new HashMap<>();
    rowsOf("40-lots").forEach(l -> potted.put(l.get("lot"), count(l, "number")));

    for (var c : rowsOf("44-lot-counts")) {
      var lot = c.get("lot");
      var expected =
          potted.get(lot) - goneBy(losses, lot, c.get("on")) - goneBy(outgoings, lot, c.get("on"));
      assertThat(count(c, "alive")).as("%s", c).isEqualTo(expected);
      if (!c.get("saleable").isEmpty()) {
        assertThat(count(c, "saleable")).as("%s", c).isLessThanOrEqualTo(expected);
      }
    }
    potted.forEach(
        (lot, n) ->
            assertThat(goneBy(losses, lot, "9999") + goneBy(outgoings, lot, "9999"))
                .as(lot)
                .isLessThanOrEqualTo(n));
  }

  @Test
  void no_lot_takes_more_from_a_tray_than_came_off_the_mist_alive() {
    var alive = new HashMap<String, Integer>();
    rowsOf("37-weanings").forEach(w -> alive.put(w.get("tray"), count(w, "alive")));
    rowsOf("41-lot-sources").stream()
        .filter(s -> alive.containsKey(s.get("source")))
        .forEach(s -> assertThat(count(s, "number")).isBetween(1, alive.get(s.get("source"))));
  }

  @Test
  void the_correction_of_the_exchanged_stakes_reaches_both_lots_and_all_forty_pots() {
    var ties = rowsOf("50-ties");
    var lots = Map.of("22-C18-03-G1", "C18-04", "22-C18-04-G1", "C18-03");
    var units = new HashMap<>(lots);
    rowsOf("45-plants").stream()
        .filter(p -> lots.containsKey(p.get("lot")))
        .forEach(p -> units.put(p.get("plant"), lots.get(p.get("lot"))));

    assertThat(units).hasSize(42);
    assertThat(ties.stream().collect(toMap(t -> t.get("unit"), t -> t.get("accession"))))
        .isEqualTo(units);
    assertThat(ties)
        .allMatch(t -> t.get("from").equals("2022-07-05") && t.get("until").isEmpty())
        .allMatch(t -> t.get("said_on").equals("2022-09-08"));
  }

  @Test
  void twelve_observations_follow_the_pots_whose_stakes_were_exchanged() {
    var units = rowsOf("50-ties").stream().map(t -> t.get("unit")).collect(toSet());
    assertThat(rowsOf("65-observations"))
        .filteredOn(o -> units.contains(o.get("unit")))
        .filteredOn(o -> o.get("on").compareTo("2022-07-05") >= 0)
        .filteredOn(o -> o.get("on").compareTo("2022-09-08") < 0)
        .hasSize(12);
  }

  @Test
  void a_candidate_passes_the_gates_one_after_another() {
    rowsOf("73-decisions").stream()
        .collect(groupingBy(d -> d.get("accession")))
        .forEach(
            (candidate, decisions) -> {
              int stage = 0;
              var day = "";
              var open = true;
              for (var d : decisions) {
                assertThat(open).as("%s was discarded before %s", candidate, d).isTrue();
                assertThat(d.get("gate")).as("%s", d).isEqualTo(GATES.get(stage));
                assertThat(d.get("on")).as("%s", d).isGreaterThanOrEqualTo(day);
                day = d.get("on");
                switch (d.get("choice")) {
                  case "advance" -> stage++;
                  case "hold" -> assertThat(d.get("hold_until")).as("%s", d).isGreaterThan(day);
                  default -> open = false;
                }
              }
            });
    assertThat(rowsOf("73-decisions").stream().map(d -> d.get("accession")).distinct()).hasSize(24);
  }

  @Test
  void every_decision_says_why() {
    assertThat(rowsOf("73-decisions")).noneMatch(d -> d.get("reason").isBlank());
  }

  @Test
  void the_counts_are_in_before_the_propagation_gate_decides() {
    var trays = rowsOf("32-trays").stream().collect(toMap(t -> t.get("tray"), t -> t));
    var firstCount = new HashMap<String, String>();
    rowsOf("36-final-counts")
        .forEach(
            f ->
                firstCount.merge(
                    trays.get(f.get("tray")).get("accession"),
                    f.get("on"),
                    (a, b) -> a.compareTo(b) < 0 ? a : b));
    rowsOf("73-decisions").stream()
        .filter(d -> d.get("gate").equals("propagation"))
        .forEach(
            d ->
                assertThat(d.get("on"))
                    .as("%s", d)
                    .isGreaterThan(firstCount.get(d.get("accession"))));
  }

  @Test
  void an_attested_criterion_of_a_gate_is_the_only_kind_attested() {
    var attested =
        rowsOf("10-gate-policies").stream()
            .filter(p -> p.get("kind").equals("attested"))
            .map(p -> p.get("criterion"))
            .collect(toSet());
    assertThat(rowsOf("72-attestations").stream().map(a -> a.get("criterion")))
        .isSubsetOf(attested);
  }

  @Test
  void a_computed_criterion_names_its_metric_its_line_and_its_reason() {
    var criteria = rowsOf("10-gate-policies");
    assertThat(criteria.stream().map(c -> c.get("gate") + " " + c.get("criterion")))
        .doesNotHaveDuplicates();
    assertThat(criteria.stream().map(c -> c.get("gate")).distinct()).isEqualTo(GATES);
    for (var c : criteria) {
      assertThat(c.get("why")).as("%s", c).isNotBlank();
      assertThat(c.get("metric").isEmpty()).isEqualTo(c.get("kind").equals("attested"));
      switch (c.get("kind")) {
        case "fact" -> assertThat(c.get("advance_line")).as("%s", c).isNotEmpty();
        case "chance" -> assertThat(c.get("advance_chance")).as("%s", c).isNotEmpty();
        case "allowance" -> assertThat(c.get("allowed_percent")).as("%s", c).isNotEmpty();
        default -> assertThat(c.get("advance_line")).as("%s", c).isEmpty();
      }
    }
  }

  @Test
  void nothing_is_dated_after_today() {
    for (var name : sheetNames().toList()) {
      var sheet = Sheet.read(name);
      if (sheet.header().contains("on")) {
        assertThat(sheet.rows().stream().map(r -> LocalDate.parse(r.get("on"))))
            .as(name)
            .allMatch(on -> !on.isAfter(TODAY));
      }
    }
  }

  static Stream<String> sheetNames() {
    return columnsBySheet().keySet().stream();
  }

  private static Map<String, List<String>> columnsBySheet() {
    var sheets = new TreeMap<String, List<String>>();
    var columns = new ArrayList<String>();
    for (var word : SHEETS.trim().split("\\s+")) {
      if (word.endsWith(":")) {
        columns = new ArrayList<>();
        sheets.put(word.substring(0, word.length() - 1), columns);
      } else {
        columns.add(word);
      }
    }
    return sheets;
  }

  private static List<String> labels() {
    var labels = new ArrayList<String>(positions());
    Map.of("32-trays", "tray", "40-lots", "lot", "45-plants", "plant", "63-plots", "plot")
        .forEach((sheet, column) -> rowsOf(sheet).forEach(r -> labels.add(r.get(column))));
    return labels;
  }

  private static List<String> positions() {
    return rowsOf("21-field-tags").stream()
        .map(t -> t.get("population") + "/" + t.get("row") + "/" + t.get("position"))
        .toList();
  }

  private static String kindOf(CSVRecord observation) {
    return LABELS_BY_KIND.entrySet().stream()
        .filter(e -> e.getValue().contains(observation.get("unit")))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> labelsOf(String sheet, String column) {
    return rowsOf(sheet).stream().map(r -> r.get(column)).collect(toSet());
  }

  /** Pots of that size first filled in that year: candidates and, in #1, the market check. */
  private static int pottedIn(String size, String year) {
    return rowsOf("40-lots").stream()
        .filter(l -> l.get("class").equals(size) && l.get("on").startsWith(year))
        .collect(summingInt(l -> count(l, "number")));
  }

  private static int goneBy(List<CSVRecord> rows, String lot, String day) {
    return rows.stream()
        .filter(r -> r.get("lot").equals(lot) && r.get("on").compareTo(day) <= 0)
        .collect(summingInt(r -> count(r, "number")));
  }

  private static int count(CSVRecord row, String column) {
    return Integer.parseInt(row.get(column));
  }
}
