package trialwood.demo;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.summingInt;
import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static trialwood.demo.Sheet.rowsOf;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The propagation runs of the demo nursery against the numbers of its (invented) scenario. */
class DemoBenchTest {

  private static final List<CSVRecord> TRAYS = rowsOf("32-trays");
  private static final List<CSVRecord> LOOKS = rowsOf("34-looks");
  private static final List<CSVRecord> WEANINGS = rowsOf("37-weanings");
  private static final Map<String, CSVRecord> FINAL = byTray(rowsOf("36-final-counts"));
  private static final Map<String, CSVRecord> TRAY = byTray(TRAYS);

  /** Rooted tray by tray, the days between which half had rooted, alive 14 days off the mist. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      textBlock =
          """
          21-CK-B,   23 24 22, 14, 18, 68
          21-A18-01, 22 21 23, 18, 21, 64
          21-A18-02, 15 17 14, 24, 28, 43
          21-B18-01, 20 19 21, 21, 24, 49
          21-C18-01, 21 20 22, 18, 21, 61
          22-CK-B,   23 22 23, 14, 18, 67
          22-A18-02, 14 16 13, 24, 28, 40
          22-A18-03, 19 21 20, 21, 24, 58
          22-A18-04, 23 22 9,  18, 21, 51
          22-B18-02, 17 18 16, 24, 28, 47
          22-B18-03, 5 3 6,    35, 42, 11
          22-C18-02, 22 21 20, 18, 21, 60
          22-C18-03, 22 21 23, 18, 21, 65
          22-C18-04, 21 22 20, 18, 21, 61
          22-D18-01, 18 20 19, 21, 24, 52
          22-D18-02, 20 21 22, 18, 21, 60
          22-E18-01, 23 21 22, 18, 21, 64
          22-E18-02, 21 22 21, 21, 24, 62
          23-CK-B,   22 23 23, 14, 18, 67
          23-A18-04, 22 23 21, 18, 21, 64
          23-B18-03, 9 7 8,    28, 35, 15
          23-A18-05, 21 20 22, 18, 21, 61
          23-B18-04, 12 14 11, 24, 28, 33
          23-B18-05, 21,       18, 21, 20
          23-C18-05, 20 22 21, 21, 24, 60
          23-C18-06, 18 17 20, 24, 28, 50
          23-D18-03, 22 22 21, 18, 21, 63
          23-E18-03, 16 15 18, 24, 28, 44
          23-F18-01, 23 22 22, 18, 21, 66
          23-F18-02, 19 18 20, 21, 24, 55
          """)
  void a_batch_roots_as_the_scenario_says(
      String batch, String rooted, int after, int by, int aliveOffTheMist) {
    var trays = labelsOf(batch);

    assertThat(trays.stream().map(t -> FINAL.get(t).get("rooted")))
        .containsExactly(rooted.split(" "));
    assertThat(firstLookWithHalfRooted(batch)).containsExactly(after, by);
    assertThat(aliveAfter(14, trays)).isEqualTo(aliveOffTheMist);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"22L-CK-B, 11 9 13", "22L-C18-01, 10 12 9", "22L-D18-01, 13 11 12"})
  void the_late_run_in_the_old_mist_house_failed_check_and_all(String batch, String rooted) {
    assertThat(labelsOf(batch).stream().map(t -> FINAL.get(t).get("rooted")))
        .containsExactly(rooted.split(" "));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"R21, 15, 360", "R22, 39, 936", "R22L, 9, 216", "R23, 34, 816", "R26L, 12, 288"})
  void a_run_has_its_trays_and_cuttings(String run, int trays, int cuttings) {
    var batches =
        rowsOf("31-batches").stream()
            .filter(b -> b.get("run").equals(run))
            .map(b -> b.get("batch"))
            .toList();
    var ofRun = TRAYS.stream().filter(t -> batches.contains(t.get("batch"))).toList();

    assertThat(ofRun).hasSize(trays);
    assertThat(ofRun.stream().mapToInt(t -> count(t, "stuck")).sum()).isEqualTo(cuttings);
  }

  @Test
  void every_final_count_closes_on_what_was_stuck() {
    var takenOut =
        rowsOf("35-taken-out").stream()
            .collect(groupingBy(t -> t.get("tray"), summingInt(t -> count(t, "number"))));

    assertThat(FINAL.keySet()).isEqualTo(closed());
    FINAL.forEach(
        (label, f) -> {
          var all =
              Stream.of("rooted", "alive_without_roots", "dead", "taken_out")
                  .mapToInt(c -> count(f, c))
                  .sum();
          assertThat(all).as(label).isEqualTo(count(TRAY.get(label), "stuck"));
          assertThat(count(f, "taken_out")).as(label).isEqualTo(takenOut.getOrDefault(label, 0));
        });
  }

  @Test
  void the_late_run_of_November_2026_is_still_looked_at() {
    var open = LOOKS.stream().filter(look -> look.get("tray").startsWith("26L-")).toList();
    Map<String, Integer> aliveBefore = new HashMap<>();
    for (var look : open) {
      var label = look.get("tray");
      assertThat(FINAL).doesNotContainKey(label);
      assertThat(count(look, "alive") + count(look, "dead_removed"))
          .as(label)
          .isEqualTo(aliveBefore.getOrDefault(label, 24));
      aliveBefore.put(label, count(look, "alive"));
      assertThat(daysSinceSticking(look)).isIn(7L, 10L, 14L, 18L);
    }
    assertThat(open.stream().filter(look -> look.get("tray").equals("26L-E18-02-3")))
        .as("the tray that nobody looked at for more than a week")
        .hasSize(2);
    assertThat(open).hasSize(4 * 12 - 2);
  }

  /** All but those of the run that still stands. */
  private static Set<String> closed() {
    return TRAY.keySet().stream()
        .filter(label -> !label.startsWith("26L-"))
        .collect(Collectors.toSet());
  }

  private static long daysSinceSticking(CSVRecord look) {
    return ChronoUnit.DAYS.between(date(TRAY.get(look.get("tray")), "stuck_on"), date(look, "on"));
  }

  @Test
  void a_tray_is_stuck_on_a_day_of_its_run_in_a_place_of_its_own() {
    Map<String, CSVRecord> runs = new HashMap<>();
    rowsOf("30-runs").forEach(r -> runs.put(r.get("run"), r));
    Map<String, String> runOf = new HashMap<>();
    rowsOf("31-batches").forEach(b -> runOf.put(b.get("batch"), b.get("run")));
    var places = new HashSet<String>();

    for (var tray : TRAYS) {
      var run = runs.get(runOf.get(tray.get("batch")));
      assertThat(date(tray, "stuck_on")).isBetween(date(run, "from"), date(run, "to"));
      assertThat(places.add(run.get("run") + tray.get("block") + "/" + tray.get("place"))).isTrue();
    }
  }

  @Test
  void no_look_shows_more_than_the_tray_can_hold() {
    Map<String, Integer> aliveBefore = new HashMap<>();
    for (var look : LOOKS) {
      var label = look.get("tray");
      var last = FINAL.get(label);
      assertThat(count(look, "rooted")).as(label).isLessThanOrEqualTo(count(look, "lifted"));
      if (last == null) {
        continue;
      }
      assertThat(count(look, "rooted")).as(label).isLessThanOrEqualTo(count(last, "rooted"));
      assertThat(count(look, "lifted")).as(label).isLessThanOrEqualTo(count(look, "alive"));
      assertThat(count(look, "alive"))
          .as(label)
          .isBetween(
              count(last, "rooted") + count(last, "alive_without_roots"),
              aliveBefore.getOrDefault(label, 24));
      assertThat(date(look, "on")).as(label).isBeforeOrEqualTo(date(last, "on"));
      aliveBefore.put(label, count(look, "alive"));
    }
  }

  @Test
  void weaning_starts_after_the_final_count_and_loses_only_rooted_ones() {
    assertThat(WEANINGS).hasSize(2 * FINAL.size());
    for (var w : WEANINGS) {
      var last = FINAL.get(w.get("tray"));
      assertThat(date(w, "last_mist")).isAfter(date(last, "on"));
      assertThat(count(w, "alive")).isLessThanOrEqualTo(count(last, "rooted"));
      assertThat(daysBetween(w, "last_mist", "on")).isIn(7L, 14L);
    }
  }

  @Test
  void the_uneven_tray_still_counts_when_the_gate_meets_in_July_2022() {
    var gate =
        rowsOf("73-decisions").stream()
            .filter(d -> d.get("accession").equals("A18-04"))
            .filter(d -> d.get("gate").equals("propagation"))
            .findFirst()
            .orElseThrow();

    assertThat(rowsOf("33-tray-rulings"))
        .singleElement()
        .satisfies(
            ruling -> {
              assertThat(ruling.get("tray")).isEqualTo("22-A18-04-3");
              assertThat(ruling.get("counts")).isEqualTo("no");
              assertThat(date(ruling, "on")).isAfter(date(gate, "on"));
            });
    assertThat(gate.get("choice")).isEqualTo("hold");
  }

  private static List<String> labelsOf(String batch) {
    return TRAYS.stream()
        .filter(t -> t.get("batch").equals(batch))
        .map(t -> t.get("tray"))
        .toList();
  }

  /** The last look day with fewer than half of the lifted rooted, and the first with half. */
  private static List<Integer> firstLookWithHalfRooted(String batch) {
    var lifted = new TreeMap<Integer, Integer>();
    var rooted = new TreeMap<Integer, Integer>();
    for (var look : LOOKS) {
      var tray = TRAY.get(look.get("tray"));
      if (tray.get("batch").equals(batch)) {
        var day = (int) ChronoUnit.DAYS.between(date(tray, "stuck_on"), date(look, "on"));
        lifted.merge(day, count(look, "lifted"), Integer::sum);
        rooted.merge(day, count(look, "rooted"), Integer::sum);
      }
    }
    var first =
        lifted.keySet().stream()
            .filter(day -> 2 * rooted.get(day) >= lifted.get(day))
            .findFirst()
            .orElseThrow();
    return List.of(lifted.lowerKey(first), first);
  }

  private static int aliveAfter(int days, List<String> trays) {
    return WEANINGS.stream()
        .filter(w -> trays.contains(w.get("tray")) && daysBetween(w, "last_mist", "on") == days)
        .mapToInt(w -> count(w, "alive"))
        .sum();
  }

  private static Map<String, CSVRecord> byTray(List<CSVRecord> rows) {
    return rows.stream().collect(toMap(r -> r.get("tray"), r -> r));
  }

  private static long daysBetween(CSVRecord row, String from, String to) {
    return ChronoUnit.DAYS.between(date(row, from), date(row, to));
  }

  private static LocalDate date(CSVRecord row, String column) {
    return LocalDate.parse(row.get(column));
  }

  private static int count(CSVRecord row, String column) {
    return Integer.parseInt(row.get(column));
  }
}
