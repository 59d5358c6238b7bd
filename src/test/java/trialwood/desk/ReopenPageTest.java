package trialwood.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.gate.Choice;
import trialwood.gate.Criterion;
import trialwood.gate.Decisions;
import trialwood.gate.DiscardOccasions;
import trialwood.gate.GatePolicies;
import trialwood.gate.GatePolicy;
import trialwood.gate.Kind;
import trialwood.gate.LeastEvidence;
import trialwood.gate.Need;
import trialwood.gate.Ruling;
import trialwood.gate.Threshold;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.record.Refused;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;
import trialwood.testing.Statements;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;

/** What is committed here would be in the way of others: the import gives it its own database. */
@ApplicationTest
@Import(Statements.class)
class ReopenPageTest {

  private static final AtomicInteger NEXT = new AtomicInteger(1);

  @Autowired MockMvcTester browser;
  @Autowired Crops crops;
  @Autowired GatePolicies policies;
  @Autowired Accessions accessions;
  @Autowired Candidates candidates;
  @Autowired CandidateEvents events;
  @Autowired Decisions decisions;
  @Autowired Persons persons;
  @Autowired Clock clock;

  private UUID crop;
  private UUID id;
  private String code;
  private UUID breeder;

  @BeforeEach
  void a_candidate_was_discarded_at_the_bench() {
    crop = crops.findByCode("REOPENS").orElseGet(this::crop).id();
    breeder =
        persons
            .findByInitials("RX")
            .orElseGet(() -> persons.save(new Person("RX", "R. Xander", null)))
            .id();
    code = "X18-%02d".formatted(NEXT.getAndIncrement());
    id = accession(code);
    Candidate candidate = new Candidate(id);
    candidate.advanceFrom(Stage.FIELD);
    candidates.save(candidate);
    decisions.decide(
        new Ruling(
            id,
            Stage.PROPAGATION,
            Choice.DISCARD,
            "Rotted in every tray.",
            null,
            breeder,
            LocalDate.now(clock).minusDays(3)));
  }

  @Test
  void a_discarded_candidate_is_reopened_with_a_reason_and_waits_at_its_gate_again() {
    assertThat(get("/gates/propagation")).bodyText().doesNotContain(code);
    assertThat(get("/candidates/" + code))
        .bodyText()
        .contains("Discarded at: propagation", "/candidates/" + code + "/reopen");
    assertThat(get("/candidates/%s/reopen".formatted(code)))
        .bodyText()
        .contains("discarded at the gate of propagation", "Rotted in every tray.");

    assertThat(reopen("The mist had failed over its bench.", breeder))
        .hasRedirectedUrl("/candidates/" + code);

    assertThat(get("/gates/propagation")).bodyText().contains(code);
    assertThat(get("/candidates/" + code))
        .bodyText()
        .contains(
            "Stands at: propagation",
            "reopened: The mist had failed over its bench.",
            "<span>reopened ",
            "discard at the gate of propagation")
        .doesNotContain("/reopen\"");
  }

  @Test
  void without_a_reason_or_a_name_nothing_is_reopened() {
    assertThat(reopen(" ", null))
        .hasStatusOk()
        .bodyText()
        .contains("Say why it is looked at again.", "Pick who decides.");
    assertThat(reopen("x".repeat(301), breeder))
        .hasStatusOk()
        .bodyText()
        .contains("At most 300 letters.");
    assertThat(candidates.findById(id).orElseThrow().standing()).isEqualTo(Standing.DISCARDED);
    assertThat(events.findByAccessionIdOrderByOnDate(id)).isEmpty();
  }

  @Test
  void what_is_not_discarded_is_not_reopened_and_not_twice() {
    reopen("The mist had failed.", breeder);

    assertThat(reopen("Once more.", breeder)).hasStatusOk().bodyText().contains("is not discarded");
    assertThat(events.findByAccessionIdOrderByOnDate(id)).hasSize(1);
    assertThat(get("/candidates/NOBODY-1/reopen")).hasStatus(404);
  }

  @Test
  void two_who_change_an_accession_at_once_see_both() {
    assertThat(change("0", "Kettle")).hasRedirectedUrl("/accessions/" + code);
    assertThat(change("0", "Copper"))
        .hasStatusOk()
        .bodyText()
        .contains("<td>Copper</td><td>Kettle</td>", "name=\"version\" value=\"1\"");
    assertThat(change("1", "x".repeat(61)))
        .bodyText()
        .contains("A talk name has at most 60 letters.", "x".repeat(61));
    assertThat(get("/accessions/" + code))
        .bodyText()
        .contains("“Kettle”", "Talk name: <del>–</del> → <ins>Kettle</ins>");
  }

  @Test
  void whatever_code_can_be_stored_is_found_at_its_address() {
    String odd = "Ähre 7.b_c+%s".formatted(code);
    accession(odd);

    assertThat(browser.get().uri("/accessions/{code}", odd).with(Someone.as(Role.READER)))
        .hasStatusOk()
        .bodyText()
        .contains("<h1 class=\"code\">" + odd);
    assertThat(browser.get().uri("/find?q={code}", odd).with(Someone.as(Role.READER)))
        .hasRedirectedUrl("/accessions/%C3%84hre%207.b_c+" + code);
  }

  @Test
  void a_slash_belongs_to_positions_only() {
    assertThatThrownBy(() -> accession("H/03")).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Unit(UnitKind.TRAY, "22/C18-03/1", null))
        .isInstanceOf(Refused.class);
    assertThat(new Unit(UnitKind.POSITION, "P18/12/33", null).label()).isEqualTo("P18/12/33");
  }

  private UUID accession(String code) {
    return accessions
        .save(new Accession(crop, code, AccessionKind.CANDIDATE, Parentage.unknown(), "seedling"))
        .id();
  }

  private Crop crop() {
    Crop made =
        crops.save(
            new Crop(
                "REOPENS",
                "Weigela florida",
                "Weigela",
                true,
                10,
                28,
                LookDays.of("14"),
                80,
                null));
    GatePolicy policy = new GatePolicy(made.id(), 1, LocalDate.of(2018, 1, 1));
    policy.add(
        new Criterion(
            Stage.PROPAGATION,
            "clean",
            "Clean to the eye",
            Kind.ATTESTED,
            Need.MUST,
            null,
            null,
            Threshold.NONE,
            Threshold.NONE,
            LeastEvidence.NONE,
            DiscardOccasions.ONE,
            (BigDecimal) null,
            "Rot spreads."));
    policies.save(policy);
    return made;
  }

  private MvcTestResult get(String page) {
    return browser.get().uri(page).with(Someone.as(Role.BREEDER)).exchange();
  }

  private MvcTestResult reopen(String reason, @Nullable UUID by) {
    return browser
        .post()
        .uri("/candidates/{code}/reopen", code)
        .param("formKey", UUID.randomUUID().toString())
        .param("reason", reason)
        .param("by", by == null ? "" : by.toString())
        .with(Someone.as(Role.BREEDER))
        .with(csrf())
        .exchange();
  }

  private MvcTestResult change(String version, String talkName) {
    return browser
        .post()
        .uri("/accessions/{code}/edit", code)
        .param("formKey", UUID.randomUUID().toString())
        .param("version", version)
        .param("talkName", talkName)
        .param("origin", "seedling")
        .with(Someone.as(Role.BREEDER))
        .with(csrf())
        .exchange();
  }
}
