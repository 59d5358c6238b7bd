package trialwood.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static trialwood.gate.Bench.JULY;
import static trialwood.gate.Bench.offTheMist;
import static trialwood.gate.Bench.rooted;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trialwood.candidate.Stage;
import trialwood.evidence.Evidence;
import trialwood.record.Recorded;

class ReviewTest {

  private static final UUID CANDIDATE = new UUID(0, 1);

  /** The two stickings of one demo candidate: a clogged nozzle in the first, none in the second. */
  @Test
  void uneven_trays_hold_and_the_next_run_advances() {
    Review first = bench(rooted(23, 22, 9), offTheMist(51, 54), false);
    Review second = bench(rooted(22, 23, 21), offTheMist(64, 66), false);

    assertThat(first.line()).isEqualTo(Choice.HOLD);
    assertThat(first.because()).isEqualTo("Not settled: rooted; rooted-sure.");
    assertThat(second.line()).isEqualTo(Choice.ADVANCE);
    assertThat(second.because()).isEqualTo("All 3 musts are met.");
  }

  @Test
  void fourteen_of_seventy_two_discards_a_plain_candidate_and_holds_an_outstanding_one() {
    assertThat(bench(rooted(5, 3, 6), offTheMist(13, 14), false).line()).isEqualTo(Choice.DISCARD);
    assertThat(bench(rooted(5, 3, 6), offTheMist(13, 14), true).line()).isEqualTo(Choice.HOLD);
  }

  @Test
  void what_was_never_counted_holds() {
    Review review = bench(rooted(22, 21, 23), Evidence.noRecord("It is still on the mist."), false);

    assertThat(review.line()).isEqualTo(Choice.HOLD);
    assertThat(review.because()).isEqualTo("No record: off-the-mist.");
  }

  @Test
  void a_provisional_identity_passes_no_gate_however_good_the_records() {
    Review review = review(true, Policy.rooted().judge(rooted(22, 21, 23), false));

    assertThat(review.line()).isEqualTo(Choice.HOLD);
    assertThat(review.because()).contains("confirm it in flower");
  }

  @Test
  void a_preference_informs_and_decides_nothing() {
    Finding must = Policy.rooted().judge(rooted(22, 21, 23), false);
    Finding preference = Policy.preferring(Policy.offTheMist()).judge(offTheMist(49, 60), false);

    Review review = review(false, must, preference);

    assertThat(preference.verdict()).isEqualTo(Verdict.FALLS_SHORT);
    assertThat(review.line()).isEqualTo(Choice.ADVANCE);
    assertThat(review.because())
        .isEqualTo("Its one must is met. To talk about: off-the-mist-preferred.");
  }

  @Test
  void a_policy_that_asks_nothing_lets_nobody_through() {
    assertThat(review(false).line()).isEqualTo(Choice.HOLD);
  }

  @Test
  void a_word_counts_until_it_expires() {
    Attestation clear = said(true, LocalDate.of(2024, 3, 1));

    Finding inTime = spoken(clear).finding(Policy.virusTest(), CANDIDATE, LocalDate.of(2024, 2, 1));
    Finding late = spoken(clear).finding(Policy.virusTest(), CANDIDATE, LocalDate.of(2024, 3, 1));

    assertThat(inTime.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(late.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(late.because()).contains("expired on 1\u00a0Mar\u00a02024");
  }

  @Test
  void a_no_falls_short_and_silence_is_no_record() {
    assertThat(spoken(said(false, null)).finding(Policy.virusTest(), CANDIDATE, JULY).verdict())
        .isEqualTo(Verdict.FALLS_SHORT);
    assertThat(spoken().finding(Policy.virusTest(), CANDIDATE, JULY).verdict())
        .isEqualTo(Verdict.NO_RECORD);
  }

  private static Review bench(Evidence rooted, Evidence weaned, boolean outstanding) {
    return review(
        false,
        Policy.rooted().judge(rooted, outstanding),
        Policy.rootedSure().judge(rooted, outstanding),
        Policy.offTheMist().judge(weaned, outstanding));
  }

  private static Review review(boolean provisional, Finding... findings) {
    GatePolicy policy = new GatePolicy(new UUID(0, 2), 1, LocalDate.of(2018, 1, 1));
    return new Review(CANDIDATE, Stage.PROPAGATION, policy, JULY, List.of(findings), provisional);
  }

  private static Spoken spoken(Attestation... said) {
    return Spoken.of(Arrays.asList(said), Map.of());
  }

  private static Attestation said(boolean holds, @Nullable LocalDate expires) {
    Recorded recorded = new Recorded(null, "breeder", Instant.EPOCH);
    return new Attestation(
        CANDIDATE, "virus-test", LocalDate.of(2021, 3, 1), holds, expires, "Paper 12.", recorded);
  }
}
