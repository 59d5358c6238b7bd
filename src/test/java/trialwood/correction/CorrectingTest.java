package trialwood.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.people.Person;
import trialwood.propagation.Bench;
import trialwood.propagation.NewLook;
import trialwood.propagation.StickingRun;
import trialwood.propagation.TrayMoves;
import trialwood.propagation.TrayRecords;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Units;

/** Stakes of two trays that were exchanged, and what had come out of one of them since. */
@RecordTest
@Import(CorrectionSlice.class)
class CorrectingTest {

  static final LocalDate SWAPPED = Bench.STUCK.plusDays(10);
  static final LocalDate SPLIT = Bench.STUCK.plusDays(14);

  @Autowired Bench bench;
  @Autowired TrayRecords looks;
  @Autowired TrayMoves moves;
  @Autowired Correcting correcting;
  @Autowired Doubts doubts;
  @Autowired Units units;
  @Autowired Recorder recorder;
  @Autowired EntityManager records;
  @Autowired JdbcClient jdbc;

  UUID white;
  UUID pink;
  String who;

  @BeforeEach
  void two_trays_change_stakes_and_one_is_split() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    white = bench.accession("C18-03");
    pink = bench.accession("C18-04");
    UUID tray = bench.tray(run, "22-W-1", white, 20).unitId();
    bench.tray(run, "22-P-1", pink, 20);
    looks.look(tray, new NewLook(SWAPPED.minusDays(3), 5, 1, 20, 0, null), null);
    looks.look(tray, new NewLook(SWAPPED.plusDays(1), 5, 2, 20, 0, null), null);
    moves.split(tray, "22-W-1B", 24, SPLIT, 6, null, null);
    Person person = new Person("RA", "A Breeder", null);
    records.persist(person);
    who = String.valueOf(person.id());
    records.flush();
  }

  @Test
  void each_takes_the_accession_of_the_other_and_what_came_out_goes_along() {
    Proposal proposal = correcting.propose(swap());
    assertThat(proposal.groups())
        .extracting(group -> group.was() + " becomes " + group.will())
        .containsExactly("C18-03 becomes C18-04", "C18-04 becomes C18-03");
    assertThat(proposal.groups().get(0).offered())
        .extracting(Proposal.Line::label)
        .containsExactly("22-W-1", "22-W-1B");

    correct(swap());
    assertThat(whose("22-W-1", SWAPPED.minusDays(1))).isEqualTo("C18-03");
    assertThat(whose("22-W-1", SWAPPED)).isEqualTo("C18-04");
    assertThat(whose("22-W-1B", SPLIT)).isEqualTo("C18-04");
    assertThat(whose("22-P-1", SWAPPED)).isEqualTo("C18-03");
  }

  @Test
  void only_records_of_these_days_are_named_and_none_is_touched() {
    long before = allRecords();
    assertThat(correcting.propose(swap()).records())
        .extracting(Records.Hanging::words)
        .containsExactly("1 look", "1 move of cuttings");
    correct(swap());
    assertThat(allRecords()).isEqualTo(before);
  }

  @Test
  void what_is_not_ticked_stays_as_it_was() {
    CorrectionForm form = correcting.propose(swap()).ticked(swap());
    CorrectionForm half =
        form.opened(
            Objects.requireNonNull(form.units()).stream()
                .filter(unit -> !unit.equals(unit("22-W-1B")))
                .toList(),
            List.of());
    correcting.correct(half);
    records.flush();
    assertThat(whose("22-W-1B", SPLIT)).isEqualTo("C18-03");
    assertThat(whose("22-W-1", SPLIT)).isEqualTo("C18-04");
  }

  @Test
  void a_question_is_answered_by_it_and_asked_again_when_it_is_taken_back() {
    doubts.saveAndFlush(
        Doubt.noticed(unit("22-W-1"), SPLIT, "Pink flowers?", recorder.by(UUID.fromString(who))));
    UUID correction = correct(swap());
    assertThat(open()).isEmpty();
    assertThat(doubts.findByCorrectionIdOrderByOnDate(correction)).hasSize(1);

    takeBack(correction);
    assertThat(open()).extracting(Doubt::question).containsExactly("Pink flowers?");
    assertThat(doubts.findByUnitIdOrderByOnDate(unit("22-W-1"))).hasSize(2);
  }

  @Test
  void taken_back_what_held_before_holds_again_and_every_word_stays() {
    UUID correction = correct(swap());
    takeBack(correction);
    assertThat(whose("22-W-1", SPLIT)).isEqualTo("C18-03");
    assertThat(whose("22-W-1B", SPLIT)).isEqualTo("C18-03");
    assertThat(whose("22-P-1", SPLIT)).isEqualTo("C18-04");
    assertThat(
            jdbc.sql("select count(*) from tie t join unit u on u.id = t.unit_id where u.label = ?")
                .param("22-W-1")
                .query(Integer.class)
                .single())
        .isEqualTo(3);
  }

  @Test
  void after_a_later_word_it_cannot_be_taken_back() {
    UUID correction = correct(swap());
    takeBack(correction);
    assertThatThrownBy(() -> takeBack(correction))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Something was said of 22-")
        .hasMessageContaining("since");
    assertThatThrownBy(() -> takeBack(new UUID(0, 1))).hasMessageContaining("no such correction");
  }

  @Test
  void for_some_days_only_the_label_is_right_again_after_them() {
    correct(said("swap", "22-W-1", "22-P-1", null, SWAPPED, SPLIT));
    assertThat(whose("22-W-1", SPLIT.minusDays(1))).isEqualTo("C18-04");
    assertThat(whose("22-W-1", SPLIT)).isEqualTo("C18-03");
    assertThat(whose("22-W-1B", SPLIT)).isEqualTo("C18-03");
  }

  @Test
  void one_tray_alone_can_be_of_another_accession() {
    correct(said("other", "22-W-1", null, "C18-04", SWAPPED, null));
    assertThat(whose("22-W-1", SWAPPED)).isEqualTo("C18-04");
    assertThat(whose("22-P-1", SWAPPED)).isEqualTo("C18-04");
  }

  @Test
  void the_code_of_a_label_or_the_address_in_its_square_does_as_well() {
    String scanned = "https://nursery.example/s/%s\n%s".formatted(code("22-W-1"), code("22-W-1B"));
    Proposal proposal =
        correcting.propose(said("swap", scanned.toLowerCase(), "22-p-01", null, SPLIT, null));
    assertThat(proposal.groups().get(0).names()).isEqualTo("22-W-1, 22-W-1B");
    assertThat(proposal.groups().get(1).names()).isEqualTo("22-P-1");
  }

  @Test
  void what_cannot_be_is_refused_beside_its_box() {
    refused(said("swap", "22-X-9", "22-P-1", null, SWAPPED, null), "No label 22-X-9 is on record.");
    refused(said("swap", "22-W-1", "22-W-1", null, SWAPPED, null), "stands on both sides");
    refused(said("swap", "22-W-1", "", null, SWAPPED, null), "Scan or type a label");
    refused(
        said("swap", "22-W-1\n22-P-1", "22-W-1B", null, SPLIT, null), "one accession at a time");
    refused(said("swap", "22-W-1", "22-W-1B", null, SPLIT, null), "22-W-1 is C18-03 already");
    refused(said("other", "22-W-1", null, "C18-03", SWAPPED, null), "is C18-03 already");
    refused(said("other", "22-W-1", null, "X1", SWAPPED, null), "No accession X1 is on record");
    refused(said("swap", "22-W-1", "22-P-1", null, SPLIT, SWAPPED), "ends before it begins");
    refused(
        said("swap", "22-W-1", "22-P-1", null, LocalDate.now().plusDays(2), null), "still to come");
  }

  @Test
  void nothing_is_said_with_nothing_ticked() {
    assertThatThrownBy(() -> correcting.correct(swap()))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Tick what is put right");
  }

  private CorrectionForm swap() {
    return said("swap", "22-W-1", "22-P-1", null, SWAPPED, null);
  }

  private CorrectionForm said(
      String kind,
      String labels,
      @Nullable String others,
      @Nullable String accession,
      LocalDate from,
      @Nullable LocalDate until) {
    return new CorrectionForm(
        null,
        kind,
        labels,
        others,
        accession,
        from.toString(),
        until == null ? "" : until.toString(),
        null,
        null,
        null,
        "Stakes were exchanged.",
        "Flowers beside the ortets.",
        who);
  }

  /** With everything ticked that is offered. */
  private UUID correct(CorrectionForm form) {
    UUID correction = correcting.correct(correcting.propose(form).ticked(form));
    records.flush();
    return correction;
  }

  private void takeBack(UUID correction) {
    correcting.takeBack(correction, "The flowers were looked at once more.", null);
    records.flush();
  }

  private void refused(CorrectionForm form, String sentence) {
    assertThatThrownBy(() -> correcting.propose(form))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(sentence);
  }

  private UUID unit(String label) {
    return Objects.requireNonNull(units.labelled(label).orElseThrow().id());
  }

  private List<Doubt> open() {
    return doubts.findByUnitIdOrderByOnDate(unit("22-W-1")).stream()
        .filter(doubt -> doubt.answer() == null)
        .toList();
  }

  private long allRecords() {
    return jdbc.sql("select count(*) from unit_record").query(Long.class).single();
  }

  private String code(String label) {
    return jdbc.sql("select code from short_code where label_key = ?")
        .param(label)
        .query(String.class)
        .single();
  }

  private String whose(String label, LocalDate day) {
    return jdbc.sql(
            """
            select a.code from holding h
            join unit u on u.id = h.unit_id join accession a on a.id = h.accession_id
            where u.label = :label and h.from_date <= :day and :day < h.until_date
            """)
        .param("label", label)
        .param("day", day)
        .query(String.class)
        .single();
  }
}
