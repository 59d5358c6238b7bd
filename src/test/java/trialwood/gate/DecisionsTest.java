package trialwood.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.CandidateMarks;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;

@RecordTest
@Import({
  Reviews.class,
  Decisions.class,
  Catalogue.class,
  Waiting.class,
  CandidateMarks.class,
  DecisionsTest.EvenTrays.class
})
class DecisionsTest {

  private static final LocalDate JULY = LocalDate.of(2023, 7, 20);

  @Autowired Decisions decisions;
  @Autowired Reviews reviews;
  @Autowired PastDecisions past;
  @Autowired Waiting waiting;
  @Autowired GatePolicies policies;
  @Autowired Attestations attestations;
  @Autowired Candidates candidates;
  @Autowired CandidateEvents events;
  @Autowired Accessions accessions;
  @Autowired Crops crops;
  @Autowired Recorder recorder;
  @Autowired EntityManager entities;

  private UUID crop;
  private UUID candidate;

  @BeforeEach
  void a_candidate_stands_at_the_bench() {
    crop =
        crops
            .save(
                new Crop(
                    "ALTHEA",
                    "Hibiscus syriacus",
                    "althea",
                    true,
                    14,
                    28,
                    LookDays.of("14 21 28"),
                    85,
                    null))
            .id();
    GatePolicy policy = new GatePolicy(crop, 1, LocalDate.of(2018, 1, 1));
    policy.add(Policy.leafSpot());
    policy.add(Policy.rooted());
    policy.add(Policy.rootedSure());
    policy.add(Policy.attested(Stage.PROPAGATION, "true-leaf", "Leaf like the ortet"));
    policy.add(Policy.survives(Stage.CONTAINER_2));
    policies.save(policy);
    candidate = tagged("A18-04");
  }

  @Test
  void a_decision_keeps_the_lines_and_the_numbers_it_was_made_on() {
    say("true-leaf", true);

    decisions.decide(ruling(Stage.PROPAGATION, Choice.ADVANCE, null, null));
    entities.flush();
    entities.clear();

    Decision kept = past.findByAccessionIdOrderByOnDateDescIdDesc(candidate).get(0);
    assertThat(kept.line()).isEqualTo(Choice.ADVANCE);
    assertThat(kept.lines())
        .extracting(DecisionLine::criterion)
        .containsExactly("rooted", "rooted-sure", "true-leaf");
    assertThat(kept.lines().get(0).found()).isEqualTo("91.7\u00a0% · 22, 21, 23");
    assertThat(kept.evidenceSchema()).isEqualTo(1);
    assertThat(kept.evidence().criteria().get(1).units()).isEqualTo(72);
    assertThat(kept.evidence().criteria().get(1).interval()).isNotNull();
    assertThat(standing().stage()).isEqualTo(Stage.CONTAINER_1);
  }

  @Test
  void going_against_the_line_asks_for_a_reason() {
    assertThat(review().line()).isEqualTo(Choice.HOLD);
    assertThatThrownBy(() -> decisions.decide(ruling(Stage.PROPAGATION, Choice.DISCARD, " ", null)))
        .isInstanceOf(Refused.class)
        .hasMessage("The records speak for hold. Say why you decide otherwise.");

    decisions.decide(ruling(Stage.PROPAGATION, Choice.DISCARD, "No room on the bench.", null));

    assertThat(standing().standing()).isEqualTo(Standing.DISCARDED);
  }

  @Test
  void a_decision_cannot_be_dated_before_the_one_it_follows() {
    decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, JULY.plusYears(1)));

    Ruling earlier =
        new Ruling(
            candidate,
            Stage.PROPAGATION,
            Choice.DISCARD,
            "No room.",
            null,
            null,
            JULY.minusDays(1));

    assertThatThrownBy(() -> decisions.decide(earlier))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("decided on 20\u00a0Jul\u00a02023 already");
  }

  @Test
  void a_hold_asks_for_the_day_on_which_it_ends() {
    assertThatThrownBy(() -> decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, null)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("until when");
    assertThatThrownBy(() -> decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, JULY)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("after the day of the decision");

    decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, JULY.plusYears(1)));

    assertThat(standing().holdUntil()).isEqualTo(JULY.plusYears(1));
  }

  @Test
  void nobody_is_decided_upon_at_a_gate_where_they_do_not_stand() {
    assertThatThrownBy(
            () -> decisions.decide(ruling(Stage.FIELD, Choice.DISCARD, "Late to say so.", null)))
        .isInstanceOf(Refused.class)
        .hasMessage("The candidate stands at the gate of propagation, not of field.");
  }

  @Test
  void a_later_decision_stands_after_the_earlier() {
    decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, JULY.plusYears(1)));
    say("true-leaf", true);
    decisions.decide(
        new Ruling(
            candidate, Stage.PROPAGATION, Choice.ADVANCE, null, null, null, JULY.plusDays(5)));

    assertThat(past.findByAccessionIdOrderByOnDateDescIdDesc(candidate))
        .extracting(Decision::choice)
        .containsExactly(Choice.ADVANCE, Choice.HOLD);
  }

  @Test
  void two_live_plants_go_to_trial_only_by_a_person_who_says_why() {
    Candidate scarce = candidates.findById(candidate).orElseThrow();
    scarce.advanceFrom(Stage.PROPAGATION);
    scarce.advanceFrom(Stage.CONTAINER_1);
    candidates.saveAndFlush(scarce);

    assertThatThrownBy(
            () -> decisions.decide(ruling(Stage.CONTAINER_2, Choice.ADVANCE, null, null)))
        .isInstanceOf(Refused.class)
        .hasMessage("The records speak for hold. Say why you decide otherwise.");

    Decision overruled =
        decisions.decide(ruling(Stage.CONTAINER_2, Choice.ADVANCE, "The last of the block.", null));

    assertThat(overruled.line()).isEqualTo(Choice.HOLD);
    assertThat(overruled.lines().get(0).because()).contains("too thin: 2 of 10 plants");
  }

  @Test
  void a_gate_day_that_is_past_shows_who_waited_then() {
    entities.flush();
    assertThat(at(JULY)).containsExactly(candidate);

    decisions.decide(ruling(Stage.PROPAGATION, Choice.HOLD, null, JULY.plusYears(1)));
    entities.flush();

    assertThat(waiting.at(Stage.PROPAGATION, JULY).get(0).decided()).isEqualTo(Choice.HOLD);
    assertThat(waiting.at(Stage.PROPAGATION, JULY.plusDays(1)).get(0))
        .isEqualTo(new Waiting.AtGate(candidate, JULY.plusYears(1), null, true));

    say("true-leaf", true);
    decisions.decide(
        new Ruling(
            candidate, Stage.PROPAGATION, Choice.ADVANCE, null, null, null, JULY.plusDays(9)));
    entities.flush();

    assertThat(waiting.at(Stage.PROPAGATION, JULY.plusDays(8)).get(0))
        .isEqualTo(new Waiting.AtGate(candidate, JULY.plusYears(1), null, false));
    assertThat(at(JULY.plusDays(10))).isEmpty();
    assertThat(waiting.at(Stage.CONTAINER_1, JULY.plusDays(10))).hasSize(1);
  }

  @Test
  void who_was_discarded_waits_again_from_the_day_it_is_reopened() {
    decisions.decide(ruling(Stage.PROPAGATION, Choice.DISCARD, "No room on the bench.", null));
    entities.flush();
    assertThat(at(JULY.plusDays(1))).isEmpty();

    Candidate reopened = candidates.findById(candidate).orElseThrow();
    reopened.reopen();
    candidates.saveAndFlush(reopened);
    events.saveAndFlush(
        new CandidateEvent(
            candidate,
            JULY.plusDays(5),
            CandidateEvent.Kind.REOPENED,
            "A bench came free.",
            recorder.by(null)));

    assertThat(at(JULY.plusDays(4))).isEmpty();
    assertThat(at(JULY.plusDays(5))).containsExactly(candidate);
  }

  private List<UUID> at(LocalDate day) {
    return waiting.at(Stage.PROPAGATION, day).stream().map(Waiting.AtGate::accessionId).toList();
  }

  @Test
  void what_was_said_later_is_not_known_earlier() {
    say("true-leaf", true);

    assertThat(reviews.of(Stage.PROPAGATION, Set.of(candidate), JULY).get(candidate).line())
        .isEqualTo(Choice.ADVANCE);
    assertThat(
            reviews
                .of(Stage.PROPAGATION, Set.of(candidate), JULY.minusDays(20))
                .get(candidate)
                .line())
        .isEqualTo(Choice.HOLD);
  }

  @Test
  void a_lost_tag_holds_until_the_identity_is_confirmed() {
    say("true-leaf", true);
    events.saveAndFlush(
        new CandidateEvent(
            candidate,
            JULY.minusDays(3),
            CandidateEvent.Kind.IDENTITY_PROVISIONAL,
            "Tag lost.",
            recorder.by(null)));

    assertThat(review().line()).isEqualTo(Choice.HOLD);
    assertThat(review().provisional()).isTrue();
  }

  @Test
  void the_policy_in_force_on_the_day_is_the_one_that_asks() {
    GatePolicy stricter = new GatePolicy(crop, 2, JULY.plusDays(1));
    stricter.add(Policy.offTheMist());
    policies.saveAndFlush(stricter);

    assertThat(review().policy().number()).isEqualTo(1);
    assertThat(
            reviews
                .of(Stage.PROPAGATION, Set.of(candidate), JULY.plusDays(1))
                .get(candidate)
                .policy()
                .number())
        .isEqualTo(2);
  }

  @Test
  void a_review_of_many_costs_as_many_statements_as_a_review_of_one() {
    Set<UUID> many = new HashSet<>(Set.of(candidate));
    for (int i = 10; i < 40; i++) {
      many.add(tagged("A18-" + i));
    }

    assertThat(statements(many)).isEqualTo(statements(Set.of(candidate))).isPositive();
  }

  private long statements(Set<UUID> reviewed) {
    entities.flush();
    entities.clear();
    Statistics statistics =
        entities.getEntityManagerFactory().unwrap(SessionFactory.class).getStatistics();
    statistics.setStatisticsEnabled(true);
    statistics.clear();
    assertThat(reviews.of(Stage.PROPAGATION, reviewed, JULY)).hasSameSizeAs(reviewed);
    return statistics.getPrepareStatementCount();
  }

  private UUID tagged(String code) {
    UUID id =
        accessions
            .save(
                new Accession(crop, code, AccessionKind.CANDIDATE, Parentage.unknown(), "seedling"))
            .id();
    Candidate tagged = new Candidate(id);
    tagged.advanceFrom(Stage.FIELD);
    candidates.save(tagged);
    return id;
  }

  private Review review() {
    return reviews.of(Stage.PROPAGATION, Set.of(candidate), JULY).get(candidate);
  }

  private Candidate standing() {
    entities.flush();
    entities.clear();
    return candidates.findById(candidate).orElseThrow();
  }

  private void say(String criterion, boolean holds) {
    attestations.saveAndFlush(
        new Attestation(
            candidate,
            criterion,
            JULY.minusDays(10),
            holds,
            null,
            "Seen beside the ortet.",
            recorder.by(null)));
  }

  private Ruling ruling(
      Stage gate, Choice choice, @Nullable String reason, @Nullable LocalDate until) {
    return new Ruling(candidate, gate, choice, reason, until, null, JULY);
  }

  /** A bench on which every candidate rooted 22, 21 and 23 of 24, and two pots are left. */
  @TestConfiguration(proxyBeanMethods = false)
  static class EvenTrays {

    @Bean
    EvidenceSource bench() {
      return new EvidenceSource() {
        @Override
        public Set<Metric> metrics() {
          return Set.of(
              new Metric("propagation.rooted", "Rooted", "%", "Rooted ÷ stuck."),
              new Metric("container.lost", "Lost", "plants", "Lost of those potted."));
        }

        @Override
        public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
          Evidence answer =
              ask.metricKey().equals("container.lost")
                  ? Evidence.of(0, "plants", asOf, "Counted.").from(2, 1, "0 of 2").build()
                  : Bench.rooted(22, 21, 23);
          return accessions.stream().collect(Collectors.toMap(id -> id, id -> answer));
        }
      };
    }
  }
}
