package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.site.Bench;
import trialwood.site.Benches;
import trialwood.testing.RecordTest;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;

/** Limits of the bench: common practice, no source. */
@RecordTest
@Import(PropagationSlice.class)
class StickingSessionTest {

  @Autowired trialwood.propagation.Bench bench;
  @Autowired StickingSession session;
  @Autowired SessionLists lists;
  @Autowired BenchPlanning planning;
  @Autowired TrayMoving moving;
  @Autowired TakingBack takingBack;
  @Autowired PlanLists plans;
  @Autowired BenchSpace space;
  @Autowired Benches benches;
  @Autowired Accessions accessions;
  @Autowired Candidates candidates;
  @Autowired CandidateEvents events;
  @Autowired Units units;
  @Autowired TrayRecords records;
  @Autowired Recorder recorder;
  @Autowired Identity identity;
  @Autowired JdbcClient jdbc;

  private StickingRun run;
  private Accession check;
  private Accession first;
  private Accession second;
  private Bench north;

  @BeforeEach
  void a_run() {
    check = accession("CK-B");
    first = accession("C18-03");
    second = accession("C18-04");
    run = bench.run("R22", trialwood.propagation.Bench.STUCK, id(check));
    candidates.save(new Candidate(id(first)));
    north = benches.save(new Bench("M1", "north bench", "mist house", 15, null));
    bench.flush();
  }

  private Accession accession(String code) {
    return accessions.findById(bench.accession(code)).orElseThrow();
  }

  private static UUID id(Accession accession) {
    return Objects.requireNonNull(accession.id());
  }

  private NewBatch batch(Accession whose, int... stuck) {
    return batch(whose, Batch.Source.STOCK_PLANT, null, run.fromDate(), 24, stuck);
  }

  private static NewBatch batch(
      Accession whose,
      Batch.Source source,
      @Nullable Unit plant,
      LocalDate on,
      int cells,
      int... stuck) {
    return new NewBatch(
        whose,
        source,
        plant,
        on,
        cells,
        java.util.Arrays.stream(stuck).boxed().toList(),
        null,
        null,
        null);
  }

  private Batch stick(NewBatch batch) {
    Batch stuck = session.stick(run, batch, null);
    bench.flush();
    return stuck;
  }

  private void draw(int blocks, Accession... entries) {
    planning.draw(run, new NewPlan(List.of(entries), blocks, List.of(north), 1, 7), null);
    bench.flush();
  }

  private List<String> asked(NewBatch batch) {
    return session.unusual(run, batch).stream().map(Problem::sentence).toList();
  }

  @Test
  void trays_are_numbered_and_each_goes_to_its_place_on_the_plan() {
    draw(3, check, first, second);
    stick(batch(check, 24, 24, 23));
    stick(batch(first, 24, 24, 24));

    assertThat(plans.blocks(Objects.requireNonNull(run.id())).values().stream())
        .flatExtracting(spots -> spots)
        .filteredOn(spot -> spot.tray() != null)
        .extracting(spot -> spot.tray() + " in " + spot.block())
        .containsExactlyInAnyOrder(
            "R22-CK-B-1 in 1",
            "R22-CK-B-2 in 2",
            "R22-CK-B-3 in 3",
            "R22-C18-03-1 in 1",
            "R22-C18-03-2 in 2",
            "R22-C18-03-3 in 3");
    assertThat(space.on(run.fromDate()))
        .hasSize(6)
        .allSatisfy(tray -> assertThat(tray.benchId()).isEqualTo(north.id()))
        .extracting(StandingTray::placeNumber)
        .doesNotHaveDuplicates()
        .allSatisfy(place -> assertThat(place).isBetween(1, 9));
    assertThat(lists.missing(run, "CK-B")).isEmpty();
  }

  @Test
  void a_second_batch_of_one_accession_has_labels_and_places_of_its_own() {
    draw(2, check, first, first);
    stick(batch(first, 24, 24));
    Batch again = stick(batch(first, 20, 20));

    assertThat(again.code()).isEqualTo("R22-C18-03b");
    assertThat(plans.blocks(Objects.requireNonNull(run.id())).get(1))
        .filteredOn(spot -> spot.accession().equals("C18-03"))
        .extracting(PlanLists.Spot::nth, PlanLists.Spot::tray)
        .containsExactlyInAnyOrder(tuple(1, "R22-C18-03-1"), tuple(2, "R22-C18-03b-1"));
  }

  @Test
  void a_top_up_on_another_day_is_a_batch_of_the_run() {
    stick(batch(second, 24));
    stick(batch(second, Batch.Source.STOCK_PLANT, null, run.toDate(), 24, 12));

    assertThat(lists.batches(run))
        .extracting(SessionBatch::code, SessionBatch::stuck, SessionBatch::stuckOn)
        .containsExactly(
            tuple("R22-C18-04", 24, run.fromDate()), tuple("R22-C18-04b", 12, run.toDate()));
  }

  @Test
  void the_check_is_missing_until_it_stands_in_every_block() {
    assertThat(lists.missing(run, "CK-B"))
        .containsExactly("The bench check CK-B is not stuck yet.");
    draw(3, check, first);
    stick(batch(first, 24, 24, 24));
    assertThat(lists.missing(run, "CK-B"))
        .containsExactly("The bench check CK-B is missing in block 1, 2, 3.");
    stick(batch(check, 24, 24));
    assertThat(lists.missing(run, "CK-B"))
        .containsExactly("The bench check CK-B is missing in block 3.");
  }

  @Test
  void a_run_without_a_plan_is_asked_about_once() {
    assertThat(asked(batch(check, 24)))
        .containsExactly("This run has no bench plan: where the trays stand is not drawn by lot.");
    stick(batch(check, 24));
    assertThat(asked(batch(second, 24))).isEmpty();
    assertThat(lists.missing(run, "CK-B"))
        .containsExactly("1 tray has no place on the bench: it was not placed by lot.");
  }

  @Test
  void trays_that_the_plan_has_no_place_for_are_asked_about() {
    draw(2, check, second);
    assertThat(asked(batch(second, 24, 24))).isEmpty();
    assertThat(asked(batch(second, 24, 24, 24)))
        .singleElement()
        .asString()
        .contains("2 places for this batch");
    assertThat(asked(batch(first, 24))).singleElement().asString().contains("no place left for");
  }

  @Test
  void trays_stuck_before_the_plan_was_drawn_are_set_by_it() {
    stick(batch(check, 24, 24));
    draw(2, check, first);

    assertThat(space.on(LocalDate.now()))
        .allSatisfy(tray -> assertThat(tray.benchId()).isEqualTo(north.id()))
        .extracting(StandingTray::placeNumber)
        .doesNotContain(0)
        .doesNotHaveDuplicates();
    assertThatThrownBy(() -> draw(2, check, first))
        .hasMessageContaining("stand in their places already");
  }

  @ParameterizedTest
  @ValueSource(ints = {24, 32, 50, 72, 98, 128})
  void trays_of_the_trade_are_stuck_full_without_a_question(int cells) {
    draw(1, check, second);
    NewBatch full = batch(second, Batch.Source.STOCK_PLANT, null, run.fromDate(), cells, cells);
    assertThat(asked(full)).isEmpty();
    assertThat(stick(full).code()).isEqualTo("R22-C18-04");
  }

  @Test
  void a_tray_of_sixty_cells_is_asked_about_and_holds_sixty() {
    draw(1, check, second);
    assertThat(asked(batch(second, Batch.Source.STOCK_PLANT, null, run.fromDate(), 60, 60)))
        .containsExactly("A tray of 60 cells: the usual ones have 24, 32, 50, 72, 98 or 128.");
    assertThatThrownBy(
            () -> stick(batch(second, Batch.Source.STOCK_PLANT, null, run.fromDate(), 60, 61)))
        .hasMessage("61 stuck, but the tray has 60 cells.");
  }

  @Test
  void one_cutting_too_many_is_refused_beside_its_own_tray() {
    assertThatThrownBy(() -> session.stick(run, batch(second, 24, 25), null))
        .isInstanceOfSatisfying(
            Refused.class,
            refused ->
                assertThat(refused.problems())
                    .containsExactly(
                        new Problem("rows[1].stuck", "25 stuck, but the tray has 24 cells.")));
  }

  @Test
  void an_ortet_cut_twice_in_thirty_days_is_asked_about() {
    StickingRun may = bench.run("R22A", run.fromDate().minusDays(30), id(check));
    session.stick(may, batch(first, Batch.Source.ORTET, null, may.fromDate(), 24, 24), null);
    bench.flush();
    draw(1, check, first);

    NewBatch june = batch(first, Batch.Source.ORTET, null, run.fromDate(), 24, 24);
    assertThat(asked(june))
        .singleElement()
        .asString()
        .contains("The ortet was cut on 7\u00a0May\u00a02022");
    assertThat(asked(batch(first, Batch.Source.ORTET, null, run.fromDate().plusDays(1), 24, 24)))
        .isEmpty();
    assertThat(asked(batch(first, 24))).isEmpty();
  }

  @Test
  void more_than_150_from_one_plant_in_a_day_are_asked_about() {
    draw(2, check, first, first);
    NewBatch most = batch(first, Batch.Source.ORTET, null, run.fromDate(), 98, 98, 52);
    assertThat(asked(most)).isEmpty();
    stick(batch(first, Batch.Source.ORTET, null, run.fromDate(), 98, 98));
    assertThat(asked(batch(first, Batch.Source.ORTET, null, run.fromDate(), 98, 53)))
        .containsExactly("151 cuttings from one plant in a day: more than 150 strip it.");
  }

  @Test
  void a_provisional_identity_is_asked_about() {
    events.save(
        new CandidateEvent(
            id(first),
            run.fromDate().minusDays(3),
            CandidateEvent.Kind.IDENTITY_PROVISIONAL,
            "tag lost",
            recorder.by(null)));
    draw(1, check, first);
    assertThat(asked(batch(first, 24))).singleElement().asString().contains("is provisional");
  }

  @Test
  void a_discarded_candidate_is_not_propagated() {
    Candidate candidate = candidates.findById(id(first)).orElseThrow();
    candidate.discardAt(Stage.FIELD);
    candidates.saveAndFlush(candidate);
    assertThatThrownBy(() -> asked(batch(first, 24))).hasMessageContaining("C18-03 was discarded.");
  }

  @Test
  void a_plant_of_another_accession_is_refused_as_the_source() {
    stick(batch(check, 24));
    Unit others = units.labelled("R22-CK-B-1").orElseThrow();
    assertThatThrownBy(
            () -> asked(batch(first, Batch.Source.CONTAINER_PLANT, others, run.fromDate(), 24, 24)))
        .hasMessage("R22-CK-B-1 is a plant of CK-B on that day, not of C18-03.");
  }

  @Test
  void a_stock_plant_that_tested_positive_or_died_is_not_cut() {
    Unit plant = stockPlant("C18-03-S2");
    NewBatch batch = batch(first, Batch.Source.STOCK_PLANT, plant, run.fromDate(), 24, 24);
    assertThat(asked(batch)).noneMatch(sentence -> sentence.contains("C18-03-S2"));

    happened(plant, "TESTED", "virus panel", "NEGATIVE");
    assertThat(asked(batch)).noneMatch(sentence -> sentence.contains("C18-03-S2"));
    happened(plant, "TESTED", "virus panel", "POSITIVE");
    assertThatThrownBy(() -> asked(batch))
        .hasMessageStartingWith("C18-03-S2 tested positive on ")
        .hasMessageContaining("Take no cuttings from it");

    Unit dead = stockPlant("C18-03-S3");
    happened(dead, "DIED", null, null);
    assertThatThrownBy(
            () -> asked(batch(first, Batch.Source.STOCK_PLANT, dead, run.fromDate(), 24, 24)))
        .hasMessageStartingWith("C18-03-S3 was recorded dead on ");
  }

  private Unit stockPlant(String label) {
    Unit plant = units.saveAndFlush(new Unit(UnitKind.STOCK, label, null));
    LocalDate since = run.fromDate().minusYears(1);
    identity.say(
        new Tie(
            Objects.requireNonNull(plant.id()),
            id(first),
            since,
            null,
            "kept for cuttings",
            null,
            since,
            recorder.by(null)));
    jdbc.sql(
            """
            insert into stock_plant (unit_id, number, since_date, place, account, recorded_at)
            values (:unit, :number, :since, 'hedge', 'bench', current_timestamp)
            """)
        .param("unit", plant.id())
        .param("number", label.charAt(label.length() - 1) - '0')
        .param("since", since)
        .update();
    return plant;
  }

  private void happened(Unit plant, String kind, @Nullable String agent, @Nullable String result) {
    jdbc.sql(
            """
            insert into stock_event
              (id, stock_id, on_date, kind, agent, result, account, recorded_at)
            values (:id, :unit, :day, :kind, :agent, :result, 'bench', current_timestamp)
            """)
        .param("id", UUID.randomUUID())
        .param("unit", plant.id())
        .param("day", run.fromDate().minusDays(30))
        .param("kind", kind)
        .param("agent", agent)
        .param("result", result)
        .update();
  }

  @Test
  void question_and_answer_stay_with_the_batch() {
    session.stick(run, batch(second, 24), new Checked("Is that right?", "yes, counted twice"));
    bench.flush();
    assertThat(lists.asked(run))
        .containsExactly(
            new SessionLists.Asked("R22-C18-04", "Is that right?", "yes, counted twice"));
  }

  @Test
  void the_last_batch_can_be_taken_back_and_its_labels_used_again() {
    stick(batch(check, 24));
    stick(batch(second, 24, 24));
    assertThatThrownBy(() -> takingBack.undo(run, "R22-CK-B"))
        .hasMessage("Only the last batch can be taken back.");

    takingBack.undo(run, "R22-C18-04");
    bench.flush();
    assertThat(lists.batches(run)).extracting(SessionBatch::code).containsExactly("R22-CK-B");
    assertThat(stick(batch(second, 24)).code()).isEqualTo("R22-C18-04");
  }

  @Test
  void a_batch_on_which_something_was_recorded_stays() {
    stick(batch(second, 24));
    UUID tray = space.on(run.fromDate()).get(0).trayId();
    records.rule(tray, run.fromDate(), false, "dropped", null);
    bench.flush();
    assertThatThrownBy(() -> takingBack.undo(run, "R22-C18-04"))
        .hasMessage("Something was recorded on R22-C18-04 already; it stays.");
  }

  @Test
  void a_plan_needs_the_check_and_room_on_its_bench() {
    assertThatThrownBy(() -> draw(3, first, second)).hasMessageContaining("name it, too");
    assertThatThrownBy(() -> draw(8, check, first))
        .hasMessageContaining("Bench M1 has 15 places; this plan needs place 16.");
  }

  @Test
  void a_tray_set_elsewhere_stands_there_from_that_day_and_stood_before_where_it_was_stuck() {
    draw(1, check, first);
    stick(batch(check, 24));
    StandingTray before = space.on(run.fromDate()).get(0);
    LocalDate moved = run.fromDate().plusDays(5);
    moving.move(before.trayId(), north, 12, moved, "the nozzle drips", null);
    bench.flush();

    assertThat(space.on(moved.minusDays(1)).get(0).placeNumber()).isEqualTo(before.placeNumber());
    assertThat(space.on(moved).get(0).placeNumber()).isEqualTo(12);
    assertThat(plans.moves(before.trayId()))
        .containsExactly(new PlanLists.Stood(moved, "M1", 12, "the nozzle drips"));
  }

  @Test
  void two_trays_do_not_stand_on_one_place() {
    draw(1, check, first);
    stick(batch(check, 24));
    stick(batch(first, 24));
    List<StandingTray> trays = space.on(run.fromDate());
    assertThatThrownBy(
            () ->
                moving.move(
                    trays.get(0).trayId(),
                    north,
                    trays.get(1).placeNumber(),
                    run.fromDate(),
                    "more light",
                    null))
        .hasMessageContaining("stands there.");
  }

  @Test
  void a_place_behind_the_end_of_the_bench_is_refused() {
    draw(1, check, first);
    stick(batch(check, 24));
    UUID tray = space.on(run.fromDate()).get(0).trayId();
    Stream.of(0, 16)
        .forEach(
            place ->
                assertThatThrownBy(
                        () -> moving.move(tray, north, place, run.fromDate(), "why", null))
                    .isInstanceOf(Refused.class));
  }
}
