package trialwood.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.evidence.Ask;

/** Criteria of the default policy for an easy softwood shrub (common practice, no source). */
final class Policy {

  private static final LeastEvidence THREE_TRAYS = new LeastEvidence(72, 3, null, null);

  private Policy() {}

  static Criterion rooted() {
    return criterion(
        Stage.PROPAGATION,
        "rooted",
        Kind.FACT,
        "propagation.rooted",
        Direction.AT_LEAST,
        Threshold.at("80"),
        Threshold.NONE,
        THREE_TRAYS,
        DiscardOccasions.ONE);
  }

  static Criterion rootedSure() {
    return criterion(
        Stage.PROPAGATION,
        "rooted-sure",
        Kind.CHANCE,
        "propagation.rooted",
        Direction.AT_LEAST,
        Threshold.at("70", "0.90"),
        Threshold.at("65", "0.05"),
        THREE_TRAYS,
        new DiscardOccasions(1, 2));
  }

  /** Not more than 15 points behind the bench check, as likely as not. */
  static Criterion notFarBehind() {
    return criterion(
        Stage.PROPAGATION,
        "near-check",
        Kind.CHANCE,
        "propagation.against-check",
        Direction.AT_LEAST,
        Threshold.at("-15", "0.50"),
        Threshold.NONE,
        LeastEvidence.NONE,
        DiscardOccasions.ONE);
  }

  static Criterion offTheMist() {
    return criterion(
        Stage.PROPAGATION,
        "off-the-mist",
        Kind.FACT,
        "propagation.off-the-mist",
        Direction.AT_LEAST,
        Threshold.at("92"),
        Threshold.at("85"),
        new LeastEvidence(10, 3, null, null),
        new DiscardOccasions(1, 2));
  }

  static Criterion leafSpot() {
    return criterion(
        Stage.FIELD,
        "leaf-spot",
        Kind.FACT,
        "field.worst",
        Direction.AT_MOST,
        Threshold.at("15"),
        Threshold.at("25"),
        LeastEvidence.NONE,
        DiscardOccasions.ONE);
  }

  /** A fact of the dossier that never speaks for a discard. */
  static Criterion atLeast(String line) {
    return criterion(
        Stage.DOSSIER,
        "at-least",
        Kind.FACT,
        "dossier.any",
        Direction.AT_LEAST,
        Threshold.at(line),
        Threshold.NONE,
        LeastEvidence.NONE,
        DiscardOccasions.ONE);
  }

  static Criterion survives() {
    return survives(Stage.CONTAINER_1);
  }

  static Criterion survives(Stage gate) {
    return new Criterion(
        gate,
        "survives",
        "Losses since potting",
        Kind.ALLOWANCE,
        Need.MUST,
        new Ask("container.lost", null, null),
        Direction.AT_MOST,
        Threshold.NONE,
        Threshold.NONE,
        new LeastEvidence(10, null, null, null),
        DiscardOccasions.ONE,
        new BigDecimal("5"),
        "Customers count dead pots.");
  }

  static Criterion virusTest() {
    return attested(Stage.DOSSIER, "virus-test", "Virus test clear on all stock");
  }

  static Criterion attested(Stage gate, String code, String label) {
    return new Criterion(
        gate,
        code,
        label,
        Kind.ATTESTED,
        Need.MUST,
        null,
        null,
        Threshold.NONE,
        Threshold.NONE,
        LeastEvidence.NONE,
        DiscardOccasions.ONE,
        null,
        "No record can compute it.");
  }

  private static Criterion criterion(
      Stage gate,
      String code,
      Kind kind,
      String metric,
      Direction direction,
      Threshold advance,
      Threshold discard,
      LeastEvidence least,
      DiscardOccasions occasions) {
    return of(gate, code, kind, Need.MUST, metric, direction, advance, discard, least, occasions);
  }

  static Criterion preferring(Criterion must) {
    return of(
        must.gate(),
        must.code() + "-preferred",
        must.kind(),
        Need.PREFER,
        metric(must),
        must.direction(),
        must.advance(),
        must.discard(),
        must.least(),
        must.occasions());
  }

  private static String metric(Criterion criterion) {
    @Nullable Ask ask = criterion.ask();
    return ask == null ? "" : ask.metricKey();
  }

  private static Criterion of(
      Stage gate,
      String code,
      Kind kind,
      Need need,
      String metric,
      Direction direction,
      Threshold advance,
      Threshold discard,
      LeastEvidence least,
      DiscardOccasions occasions) {
    return new Criterion(
        gate,
        code,
        code,
        kind,
        need,
        new Ask(metric, null, null),
        direction,
        advance,
        discard,
        least,
        occasions,
        null,
        "Common practice.");
  }
}
