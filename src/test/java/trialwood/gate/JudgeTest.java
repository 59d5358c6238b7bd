package trialwood.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trialwood.gate.Bench.rooted;
import static trialwood.gate.Verdict.FALLS_SHORT;
import static trialwood.gate.Verdict.MEETS;
import static trialwood.gate.Verdict.NOT_SETTLED;
import static trialwood.gate.Verdict.NO_RECORD;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.StudentBelief;
import trialwood.candidate.Stage;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.Metric;
import trialwood.record.Refused;

class JudgeTest {

  private static final boolean PLAIN = false;
  private static final boolean OUTSTANDING = true;

  @Test
  void three_even_trays_that_root_meet_both_the_count_and_the_chance() {
    Evidence run = rooted(22, 21, 23);

    Finding count = Policy.rooted().judge(run, PLAIN);
    Finding chance = Policy.rootedSure().judge(run, PLAIN);

    assertThat(count.verdict()).isEqualTo(MEETS);
    assertThat(count.found()).isEqualTo("91.7\u00a0% · 22, 21, 23");
    assertThat(count.asked()).isEqualTo("at least 80\u00a0% from 3 trays and 72 cuttings");
    assertThat(chance.verdict()).isEqualTo(MEETS);
  }

  @Test
  void what_holds_or_does_not_is_answered_with_yes_or_no() {
    Finding yes = Policy.atLeast("1").judge(yesOrNo(1), PLAIN);
    Finding no = Policy.atLeast("1").judge(yesOrNo(0), PLAIN);

    assertThat(yes.verdict()).isEqualTo(MEETS);
    assertThat(yes.found()).isEqualTo("yes");
    assertThat(yes.asked()).isEqualTo("yes");
    assertThat(yes.because()).isEqualTo("The records say yes.");
    assertThat(no.verdict()).isEqualTo(NOT_SETTLED);
    assertThat(no.found()).isEqualTo("no");
    assertThat(no.because()).startsWith("The records say no. By itself");
  }

  private static Evidence yesOrNo(int value) {
    return Evidence.of(value, Metric.YES_OR_NO, LocalDate.of(2026, 11, 25), "Whether.").build();
  }

  @Test
  void a_question_that_does_not_arise_is_met_and_says_why() {
    Evidence noClock =
        Evidence.moot("no clock runs", "days", LocalDate.of(2026, 11, 25), "Days left.").build();

    Finding finding = Policy.atLeast("90").judge(noClock, PLAIN);

    assertThat(finding.verdict()).isEqualTo(MEETS);
    assertThat(finding.found()).isEqualTo("no clock runs");
    assertThat(finding.asked()).isEqualTo("at least 90\u00a0days");
  }

  @Test
  void trays_that_disagree_settle_nothing() {
    Evidence run = rooted(23, 22, 9);

    assertThat(Policy.rooted().judge(run, PLAIN).verdict()).isEqualTo(NOT_SETTLED);
    Finding chance = Policy.rootedSure().judge(run, PLAIN);
    assertThat(chance.verdict()).isEqualTo(NOT_SETTLED);
    assertThat(chance.found()).startsWith("75.0\u00a0%");
    assertThat(chance.because())
        .contains("at least 70\u00a0% with chance 0.")
        .contains("0.90 is asked");
  }

  @Test
  void a_plain_candidate_that_does_not_root_falls_short_after_one_run() {
    assertThat(Policy.rootedSure().judge(rooted(5, 3, 6), PLAIN).verdict()).isEqualTo(FALLS_SHORT);
  }

  @Test
  void an_outstanding_one_is_given_a_second_run() {
    Finding finding = Policy.rootedSure().judge(rooted(5, 3, 6), OUTSTANDING);

    assertThat(finding.verdict()).isEqualTo(NOT_SETTLED);
    assertThat(finding.because())
        .contains(
            "A discard asks for 2 valid occasions in a row, for something outstanding is marked;"
                + " this is 1.");
  }

  @Test
  void two_valid_runs_end_the_hope_for_an_outstanding_one() {
    Evidence second = rooted(9, 7, 8);
    Evidence both = Bench.run(9, 7, 8).onOccasions(List.of(second, rooted(5, 3, 6))).build();

    assertThat(Policy.rootedSure().judge(both, OUTSTANDING).verdict()).isEqualTo(FALLS_SHORT);
  }

  @Test
  void a_good_run_between_two_bad_ones_keeps_an_outstanding_one() {
    Evidence last = rooted(5, 3, 6);
    Evidence all = Bench.run(5, 3, 6).onOccasions(List.of(last, rooted(20, 19, 21), last)).build();

    assertThat(Policy.rootedSure().judge(all, OUTSTANDING).verdict()).isEqualTo(NOT_SETTLED);
  }

  @Test
  void a_void_run_discards_nobody() {
    String failed = "Run L22 is void for discards: the check rooted 45.8 %, floor 85 %.";
    Evidence run = Bench.run(5, 3, 6).barringDiscard(failed).build();

    Finding finding = Policy.rootedSure().judge(run, PLAIN);

    assertThat(finding.verdict()).isEqualTo(NOT_SETTLED);
    assertThat(finding.because()).endsWith("Nobody is discarded by these records. " + failed);
  }

  @Test
  void a_candidate_that_did_well_in_a_void_run_still_meets_the_line_with_the_note() {
    Evidence run = Bench.run(22, 21, 23).barringDiscard("The check failed.").build();

    Finding finding = Policy.rooted().judge(run, PLAIN);

    assertThat(finding.verdict()).isEqualTo(MEETS);
    assertThat(finding.because()).endsWith("The check failed.");
  }

  @Test
  void one_tray_is_too_little_however_well_it_rooted() {
    Finding finding = Policy.rooted().judge(rooted(21), PLAIN);

    assertThat(finding.verdict()).isEqualTo(NOT_SETTLED);
    assertThat(finding.because())
        .contains("The evidence is too thin: 1 of 3 trays, 24 of 72 cuttings.");
  }

  @Test
  void one_tray_is_too_little_to_discard_however_badly_it_rooted() {
    assertThat(Policy.rootedSure().judge(rooted(2), PLAIN).verdict()).isEqualTo(NOT_SETTLED);
  }

  @Test
  void losses_after_rooting_fall_short_below_the_discard_line_only() {
    assertThat(Policy.offTheMist().judge(Bench.offTheMist(65, 66), PLAIN).verdict())
        .isEqualTo(MEETS);
    assertThat(Policy.offTheMist().judge(Bench.offTheMist(52, 57), PLAIN).verdict())
        .isEqualTo(NOT_SETTLED);
    assertThat(Policy.offTheMist().judge(Bench.offTheMist(49, 60), PLAIN).verdict())
        .isEqualTo(FALLS_SHORT);
  }

  @Test
  void a_value_on_the_line_reaches_it_and_a_value_on_the_discard_line_is_not_beyond_it() {
    assertThat(Policy.leafSpot().judge(spot(15), PLAIN).verdict()).isEqualTo(MEETS);
    assertThat(Policy.leafSpot().judge(spot(25), PLAIN).verdict()).isEqualTo(NOT_SETTLED);
    assertThat(Policy.leafSpot().judge(spot(26), PLAIN).verdict()).isEqualTo(FALLS_SHORT);
  }

  @Test
  void no_record_is_an_answer_of_its_own_and_never_a_zero() {
    Finding finding =
        Policy.rooted().judge(Evidence.noRecord("It was never stuck.").in("%"), PLAIN);

    assertThat(finding.verdict()).isEqualTo(NO_RECORD);
    assertThat(finding.found()).isEqualTo("no record");
    assertThat(finding.asked()).startsWith("at least 80\u00a0%");
    assertThat(finding.because()).isEqualTo("It was never stuck.");
  }

  @Test
  void a_chance_with_a_most_asks_for_the_other_side_of_the_belief() {
    Criterion noWorse =
        new Criterion(
            Stage.CONTAINER_1,
            "leaf-spot",
            "Leaf spot against the check",
            Kind.CHANCE,
            Need.MUST,
            new Ask("container.against-check", null, null),
            Direction.AT_MOST,
            Threshold.at("5", "0.80"),
            Threshold.at("10", "0.05"),
            LeastEvidence.NONE,
            DiscardOccasions.ONE,
            null,
            "Same yard, same water.");

    assertThat(noWorse.judge(difference(0), PLAIN).verdict()).isEqualTo(MEETS);
    assertThat(noWorse.judge(difference(5), PLAIN).verdict()).isEqualTo(NOT_SETTLED);
    assertThat(noWorse.judge(difference(20), PLAIN).verdict()).isEqualTo(FALLS_SHORT);
  }

  /**
   * Largest number with Pr(X ≤ k) ≥ 0.95, X ~ Binomial(20, 0.05): 3 (from memory; binomial tables).
   */
  @Test
  void of_twenty_pots_three_may_be_lost_where_one_in_twenty_is_allowed() {
    Finding three = Policy.survives().judge(lost(3, 20), PLAIN);

    assertThat(three.verdict()).isEqualTo(MEETS);
    assertThat(three.found()).isEqualTo("3 of 20 lost");
    assertThat(three.because())
        .contains("3 of 20 may be lost")
        .contains("refused with chance 0.02");
    assertThat(Policy.survives().judge(lost(4, 20), PLAIN).verdict()).isEqualTo(FALLS_SHORT);
    assertThat(Policy.survives().judge(lost(5, 8), PLAIN).verdict()).isEqualTo(NOT_SETTLED);
  }

  @Test
  void a_discard_line_on_the_good_side_is_refused() {
    assertThatThrownBy(
            () ->
                new Criterion(
                    Stage.FIELD,
                    "form",
                    "Form",
                    Kind.FACT,
                    Need.MUST,
                    new Ask("field.latest", null, null),
                    Direction.AT_LEAST,
                    Threshold.at("4"),
                    Threshold.at("5"),
                    LeastEvidence.NONE,
                    DiscardOccasions.ONE,
                    null,
                    "Why."))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("good side");
  }

  private static Evidence spot(double percent) {
    return Evidence.of(percent, "%", LocalDate.of(2021, 8, 20), "Worst of the looks.").build();
  }

  private static Evidence lost(int lost, int potted) {
    return Evidence.of(lost, "", LocalDate.of(2022, 10, 20), "Potted minus alive.")
        .from(potted, 1, lost + " of " + potted)
        .build();
  }

  private static Evidence difference(double points) {
    return Evidence.of(points, "%", LocalDate.of(2022, 9, 1), "Difference of means.")
        .believing(new StudentBelief(points, 3, 20), 0.95)
        .build();
  }
}
