package trialwood.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trialwood.candidate.Stage;
import trialwood.evidence.Ask;
import trialwood.evidence.Metric;
import trialwood.gate.Criterion;
import trialwood.gate.Direction;
import trialwood.gate.DiscardOccasions;
import trialwood.gate.Kind;
import trialwood.gate.LeastEvidence;
import trialwood.gate.Need;
import trialwood.gate.Threshold;

class PolicyLineTest {

  private static final Metric ROOTED = new Metric("rooted", "Rooted", "%", "Rooted ÷ stuck.");

  @Test
  void a_chance_is_told_with_both_its_rules() {
    PolicyLine line =
        told(
            criterion(
                Kind.CHANCE,
                Need.MUST,
                Threshold.at("70", "0.90"),
                Threshold.at("65", "0.05"),
                new LeastEvidence(72, 3, null, null),
                new DiscardOccasions(1, 2),
                null));

    assertThat(line.advance())
        .isEqualTo(
            "at least 70\u00a0% with a chance of 0.90 or more,"
                + " from 72\u00a0cuttings and 3\u00a0trays or more");
    assertThat(line.discard())
        .isEqualTo(
            "the chance of at least 65\u00a0% is 0.05 or less;"
                + " on 2 in a row where something outstanding is marked");
  }

  @Test
  void a_fact_says_where_hope_ends_or_that_it_never_does() {
    assertThat(told(fact(Need.MUST, Threshold.at("65"))).discard()).isEqualTo("below 65\u00a0%");
    assertThat(told(fact(Need.MUST, Threshold.NONE)).discard()).isEqualTo("never by itself");
    assertThat(told(fact(Need.PREFER, Threshold.at("65"))).discard())
        .isEqualTo("never: it only informs");
  }

  @Test
  void an_allowance_names_the_losses_that_are_allowed() {
    PolicyLine line =
        told(
            criterion(
                Kind.ALLOWANCE,
                Need.MUST,
                Threshold.NONE,
                Threshold.NONE,
                LeastEvidence.NONE,
                DiscardOccasions.ONE,
                new BigDecimal("5")));

    assertThat(line.advance())
        .isEqualTo("no more are lost than chance allows a lot that loses 5\u00a0%");
    assertThat(line.discard()).isEqualTo("more are lost than that");
  }

  private static PolicyLine told(Criterion criterion) {
    return PolicyLine.of(criterion, ROOTED, null);
  }

  private static Criterion fact(Need need, Threshold end) {
    return criterion(
        Kind.FACT, need, Threshold.at("80"), end, LeastEvidence.NONE, DiscardOccasions.ONE, null);
  }

  private static Criterion criterion(
      Kind kind,
      Need need,
      Threshold advance,
      Threshold discard,
      LeastEvidence least,
      DiscardOccasions occasions,
      @Nullable BigDecimal allowedPercent) {
    return new Criterion(
        Stage.PROPAGATION,
        "rooted",
        "Rooted of those stuck",
        kind,
        need,
        new Ask("rooted", null, null),
        Direction.AT_LEAST,
        advance,
        discard,
        least,
        occasions,
        allowedPercent,
        "Empty cells cost more than the plant earns.");
  }
}
