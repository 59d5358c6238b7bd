package trialwood.gate.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import trialwood.candidate.Stage;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;
import trialwood.gate.Choice;
import trialwood.gate.Finding;
import trialwood.gate.Review;
import trialwood.gate.Reviews;
import trialwood.gate.Verdict;
import trialwood.gate.Waiting;
import trialwood.gate.Waiting.AtGate;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** The gates of past years in the demo nursery, an invented scenario. */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
class DemoGateDayTest {

  private static final LocalDate JULY_2021 = LocalDate.of(2021, 7, 20);
  private static final LocalDate JULY_2022 = LocalDate.of(2022, 7, 25);

  @Autowired MockMvc browser;
  @Autowired Waiting waiting;
  @Autowired Reviews reviews;
  @Autowired Accessions accessions;
  @Autowired List<WorkSource> work;

  @Test
  void twelve_waited_in_july_2022_and_none_who_had_gone_on_or_was_yet_to_come() {
    assertThat(at(Stage.PROPAGATION, JULY_2022).keySet())
        .containsExactlyInAnyOrder(
            "A18-02", "A18-03", "A18-04", "B18-02", "B18-03", "C18-02", "C18-03", "C18-04",
            "D18-01", "D18-02", "E18-01", "E18-02");
    assertThat(at(Stage.CONTAINER_2, JULY_2022).keySet()).containsExactly("A18-01");
  }

  @Test
  void who_was_decided_upon_that_day_is_listed_with_the_decision_and_is_gone_the_day_after() {
    assertThat(at(Stage.PROPAGATION, JULY_2022).get("B18-02").decided()).isEqualTo(Choice.DISCARD);
    assertThat(at(Stage.PROPAGATION, JULY_2022.minusDays(1)).get("B18-02").decided()).isNull();
    assertThat(at(Stage.PROPAGATION, JULY_2022.plusDays(1)).keySet())
        .containsExactlyInAnyOrder("A18-04", "B18-03", "D18-01");
  }

  @Test
  void nobody_waits_in_the_field_before_somebody_marked_the_plant() {
    assertThat(at(Stage.FIELD, LocalDate.of(2020, 8, 26))).isEmpty();
    assertThat(at(Stage.FIELD, LocalDate.of(2020, 10, 30)).keySet())
        .containsExactlyInAnyOrder("A18-01", "A18-02", "B18-01", "C18-01", "E18-02");
  }

  @Test
  void the_bench_check_of_2022_rooted_68_of_72_and_its_run_is_valid() {
    Finding check = finding("A18-03", "run-valid", JULY_2022);
    assertThat(check.found()).isEqualTo("94.4\u00a0% · 68 of 72, run R22 valid");
    assertThat(check.verdict()).isEqualTo(Verdict.MEETS);
  }

  @Test
  void three_trays_that_disagree_settle_nothing() {
    Review pewter = review("A18-04", JULY_2022);
    assertThat(pewter.line()).isEqualTo(Choice.HOLD);
    Finding rooted = finding("A18-04", "rooted-sure", JULY_2022);
    assertThat(rooted.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(rooted.found()).startsWith("75.0\u00a0% · 54 of 72, 3 trays");
    assertThat(rooted.because())
        .contains("The trays disagree: 23, 22, 9 (χ²\u00a027.1, 2\u00a0df).");
  }

  @Test
  void the_best_flower_that_does_not_root_is_held_for_a_second_run() {
    assertThat(finding("B18-03", "rooted", JULY_2022).found())
        .startsWith("19.4\u00a0% · 14 of 72, 3 trays");
    assertThat(review("B18-03", JULY_2022).line()).isEqualTo(Choice.HOLD);
    assertThat(finding("B18-03", "rooted-sure", JULY_2022).because())
        .contains("2 valid occasions in a row, for something outstanding is marked; this is 1");
  }

  @Test
  void what_roots_and_then_dies_off_the_mist_is_named_by_the_line_it_fails() {
    assertThat(finding("B18-01", "rooted", JULY_2021).found())
        .startsWith("83.3\u00a0% · 60 of 72, 3 trays");
    assertThat(finding("B18-01", "rooted", JULY_2021).verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding("B18-01", "off-the-mist", JULY_2021).found())
        .startsWith("81.7\u00a0% · 49 of 60");
    assertThat(review("B18-01", JULY_2021).line()).isEqualTo(Choice.DISCARD);
    assertThat(review("B18-01", JULY_2021).because())
        .isEqualTo("Falls short: Alive 14 days off the mist.");
  }

  @Test
  void days_to_root_are_read_off_the_run_that_counts_and_not_off_a_younger_one() {
    assertThat(finding("D18-01", "days-to-root", JULY_2022).found())
        .isEqualTo("24\u00a0d · after day 21, by day 24, run R22");
  }

  @Test
  void the_page_of_that_day_says_so_and_can_be_written_on() throws Exception {
    String page = read("/gates/propagation?asOf=2022-07-24");
    assertThat(page)
        .contains("24\u00a0Jul\u00a02022", "12\u00a0candidates", "☐ advance")
        .contains("Not settled: Rooted of those stuck", "The trays disagree: 23, 22, 9");
    assertThat(read("/gates/propagation?asOf=2022-07-25")).doesNotContain("☐ advance");
  }

  @Test
  void a_late_flowerer_is_held_a_season_and_reminded_of_in_august() {
    assertThat(at(Stage.FIELD, LocalDate.of(2021, 7, 1)).get("E18-02").heldUntil())
        .isEqualTo(LocalDate.of(2021, 10, 31));
    assertThat(due(LocalDate.of(2021, 7, 30))).doesNotContain("Look at E18-02 again");
    assertThat(due(LocalDate.of(2021, 8, 1))).contains("Look at E18-02 again");
    assertThat(due(LocalDate.of(2021, 10, 30))).doesNotContain("Look at E18-02 again");
  }

  @Test
  void both_first_flowers_of_the_late_one_stand_on_one_line() throws Exception {
    assertThat(read("/candidates/E18-02"))
        .contains("First bloom: 14\u00a0Sep\u00a02020, 24\u00a0Aug\u00a02021");
  }

  private List<String> due(LocalDate day) {
    return work.stream().flatMap(source -> source.due(day).stream()).map(DueWork::what).toList();
  }

  private Map<String, AtGate> at(Stage gate, LocalDate day) {
    Map<UUID, AtGate> here =
        waiting.at(gate, day).stream()
            .collect(Collectors.toMap(AtGate::accessionId, Function.identity()));
    return accessions.findAllById(here.keySet()).stream()
        .collect(Collectors.toMap(Accession::code, accession -> here.get(accession.id())));
  }

  private Review review(String code, LocalDate day) {
    UUID id = accessions.named(code).orElseThrow().id();
    return reviews.of(Stage.PROPAGATION, Set.of(id), day).get(id);
  }

  private Finding finding(String code, String criterion, LocalDate day) {
    return review(code, day).findings().stream()
        .filter(finding -> finding.criterion().code().equals(criterion))
        .findFirst()
        .orElseThrow();
  }

  private String read(String page) throws Exception {
    return browser
        .perform(get(page).with(Someone.as(Role.BREEDER)))
        .andReturn()
        .getResponse()
        .getContentAsString();
  }
}
