package trialwood.gate.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.InPercent;
import trialwood.evidence.Metric;
import trialwood.gate.Criterion;
import trialwood.gate.Direction;
import trialwood.gate.DiscardOccasions;
import trialwood.gate.GatePolicies;
import trialwood.gate.GatePolicy;
import trialwood.gate.Kind;
import trialwood.gate.LeastEvidence;
import trialwood.gate.Need;
import trialwood.gate.PastDecisions;
import trialwood.gate.Threshold;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Import(GatePagesTest.UnevenTrays.class)
class GatePagesTest {

  private static final AtomicInteger NEXT = new AtomicInteger(1);

  @Autowired MockMvc browser;
  @Autowired Crops crops;
  @Autowired GatePolicies policies;
  @Autowired Accessions accessions;
  @Autowired Candidates candidates;
  @Autowired Persons persons;
  @Autowired PastDecisions past;

  private UUID id;
  private String code;
  private UUID breeder;

  @BeforeEach
  void a_candidate_waits_at_the_bench() {
    Crop crop = crops.findByCode("GATED").orElseGet(this::crop);
    breeder =
        persons
            .findByInitials("RZ")
            .orElseGet(() -> persons.save(new Person("RZ", "R. Zeder", null)))
            .id();
    code = "Z18-%02d".formatted(NEXT.getAndIncrement());
    id =
        accessions
            .save(
                new Accession(
                    Objects.requireNonNull(crop.id()),
                    code,
                    AccessionKind.CANDIDATE,
                    Parentage.unknown(),
                    "seedling"))
            .id();
    Candidate candidate = new Candidate(id);
    candidate.advanceFrom(Stage.FIELD);
    candidates.save(candidate);
  }

  @Test
  void the_list_counts_who_waits() throws Exception {
    assertThat(read("/gates", Role.READER)).contains("Propagation → container #1", "minutes");
  }

  @Test
  void gate_day_shows_each_candidate_with_its_picture_and_what_the_records_speak_for()
      throws Exception {
    assertThat(read("/gates/propagation", Role.READER))
        .contains(code, "for hold", "class=\"interval not-settled\"", "Not settled: Rooted")
        .contains("75.0\u00a0%", "23, 22, 9", "0 of 1");
  }

  @Test
  void a_gate_that_nobody_knows_is_not_found() throws Exception {
    assertThat(answer(get("/gates/greenhouse"), Role.READER).getStatus()).isEqualTo(404);
    assertThat(answer(get("/gates/released"), Role.READER).getStatus()).isEqualTo(404);
    assertThat(answer(get("/gates/trial/Z99-99"), Role.READER).getStatus()).isEqualTo(404);
  }

  @Test
  void the_breeder_is_asked_and_no_choice_is_taken_beforehand() throws Exception {
    String page = read("/gates/propagation/" + code, Role.BREEDER);

    assertThat(page).contains("How this was computed", "value=\"ADVANCE\"", "Put it on record");
    assertThat(page).doesNotContain("checked");
    assertThat(read("/gates/propagation/" + code, Role.READER)).doesNotContain("Put it on record");
  }

  @Test
  void a_decision_without_its_reason_comes_back_with_what_was_typed() throws Exception {
    MockHttpServletResponse answer =
        answer(
            form(UUID.randomUUID(), "DISCARD").param("reason", "").param("holdUntil", "someday"));

    assertThat(answer.getStatus()).isEqualTo(200);
    assertThat(answer.getContentAsString()).contains("This is not a date", "value=\"someday\"");
    assertThat(answer(form(UUID.randomUUID(), "DISCARD").param("reason", "")).getContentAsString())
        .contains("The records speak for hold. Say why you decide otherwise.");
    assertThat(past.findByAccessionIdOrderByOnDateDescIdDesc(id)).isEmpty();
  }

  @Test
  void a_day_before_any_policy_is_refused_on_the_form_that_keeps_what_was_typed() throws Exception {
    String page =
        answer(
                form(UUID.randomUUID(), "HOLD", "1 Jan 1999")
                    .param("reason", "Too few.")
                    .param("holdUntil", "31 Dec 2030"))
            .getContentAsString();

    assertThat(page)
        .contains("No gate policy was in force for the crop on that day.")
        .contains("Too few.", "value=\"31 Dec 2030\"", "Put it on record");
  }

  @Test
  void a_day_that_has_not_come_is_shown_as_today() throws Exception {
    assertThat(read("/gates/propagation/" + code + "?asOf=2999-01-01", Role.BREEDER))
        .doesNotContain("2999");
  }

  @Test
  void what_no_form_could_send_is_answered_with_the_form() throws Exception {
    MockHttpServletResponse answer =
        answer(
            post("/gates/propagation/" + code)
                .param("formKey", UUID.randomUUID().toString())
                .param("choice", "PERHAPS")
                .param("by", "nobody"));

    assertThat(answer.getStatus()).isEqualTo(200);
    assertThat(answer.getContentAsString())
        .contains("2 things to put right")
        .doesNotContain("java.lang");
  }

  @Test
  void a_decision_sent_twice_is_stored_once_and_stands_in_the_minutes() throws Exception {
    UUID key = UUID.randomUUID();
    for (int sent = 0; sent < 2; sent++) {
      MockHttpServletResponse answer =
          answer(form(key, "ADVANCE").param("reason", "A clogged nozzle."));
      assertThat(answer.getRedirectedUrl()).isEqualTo("/gates/propagation");
    }

    assertThat(past.findByAccessionIdOrderByOnDateDescIdDesc(id)).hasSize(1);
    assertThat(read("/gates/propagation/minutes", Role.READER))
        .contains(code, "A clogged nozzle.", "the records spoke for hold", "RZ");
    assertThat(read("/gates/propagation/" + code, Role.BREEDER))
        .contains("does not wait at this gate today: stage container #1", "A clogged nozzle.")
        .doesNotContain("Put it on record");
  }

  @Test
  void what_a_person_attests_answers_its_criterion() throws Exception {
    String page = "/gates/propagation/" + code + "/attest/true-leaf";
    assertThat(read(page, Role.BREEDER)).contains("Leaf like the ortet");

    MockHttpServletResponse answer =
        answer(
            post(page)
                .param("formKey", UUID.randomUUID().toString())
                .param("holds", "true")
                .param("note", "Held beside the ortet.")
                .param("on", "today")
                .param("by", breeder.toString()));

    assertThat(answer.getRedirectedUrl()).isEqualTo("/gates/propagation/" + code);
    assertThat(read("/gates/propagation/" + code, Role.READER))
        .contains("yes · RZ", "Held beside the ortet.");
  }

  private MockHttpServletRequestBuilder form(UUID key, String choice) {
    return form(key, choice, "today");
  }

  private MockHttpServletRequestBuilder form(UUID key, String choice, String on) {
    return post("/gates/propagation/" + code)
        .param("formKey", key.toString())
        .param("choice", choice)
        .param("on", on)
        .param("by", breeder.toString());
  }

  private String read(String page, Role role) throws Exception {
    MockHttpServletResponse answer = answer(get(page), role);
    assertThat(answer.getStatus()).as(page).isEqualTo(200);
    return answer.getContentAsString();
  }

  private MockHttpServletResponse answer(MockHttpServletRequestBuilder post) throws Exception {
    return answer(post.with(csrf()), Role.BREEDER);
  }

  private MockHttpServletResponse answer(MockHttpServletRequestBuilder request, Role role)
      throws Exception {
    return browser.perform(request.with(Someone.as(role))).andReturn().getResponse();
  }

  private Crop crop() {
    Crop crop =
        crops.save(
            new Crop(
                "GATED",
                "Hibiscus syriacus",
                "althea",
                true,
                14,
                28,
                LookDays.of("14 21 28"),
                85,
                null));
    GatePolicy policy =
        new GatePolicy(Objects.requireNonNull(crop.id()), 1, LocalDate.of(2018, 1, 1));
    policy.add(
        new Criterion(
            Stage.PROPAGATION,
            "rooted",
            "Rooted",
            Kind.CHANCE,
            Need.MUST,
            new Ask("uneven.rooted", null, null),
            Direction.AT_LEAST,
            Threshold.at("70", "0.90"),
            Threshold.at("65", "0.05"),
            LeastEvidence.NONE,
            DiscardOccasions.ONE,
            null,
            "Common practice."));
    policy.add(
        new Criterion(
            Stage.PROPAGATION,
            "true-leaf",
            "Leaf like the ortet",
            Kind.ATTESTED,
            Need.MUST,
            null,
            null,
            Threshold.NONE,
            Threshold.NONE,
            LeastEvidence.NONE,
            DiscardOccasions.ONE,
            null,
            "The leaf shows first whether labels were swapped."));
    policies.save(policy);
    return crop;
  }

  /** A bench on which every candidate rooted 23, 22 and 9 of 24. */
  @TestConfiguration(proxyBeanMethods = false)
  static class UnevenTrays {

    @Bean
    EvidenceSource unevenTrays() {
      return new EvidenceSource() {
        @Override
        public Set<Metric> metrics() {
          return Set.of(new Metric("uneven.rooted", "Rooted", "%", "Rooted ÷ stuck."));
        }

        @Override
        public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
          TrayPosterior trays =
              TrayPosterior.of(
                  List.of(new TrayCount(23, 24), new TrayCount(22, 24), new TrayCount(9, 24)));
          Evidence evidence =
              Evidence.of(75, "%", asOf, "Rooted ÷ stuck.")
                  .from(72, 3, "23, 22, 9")
                  .believing(new InPercent(trays), 0.9)
                  .build();
          return accessions.stream().collect(Collectors.toMap(id -> id, id -> evidence));
        }
      };
    }
  }
}
