package trialwood.ground;

import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.crop.Trait;
import trialwood.evidence.Metric;
import trialwood.gate.Criterion;
import trialwood.gate.Direction;
import trialwood.gate.LeastEvidence;
import trialwood.web.Measures;

/**
 * One criterion of a gate in plain words.
 *
 * @param measured what is looked at; for a comparison, with which check
 * @param advance what speaks for going on
 * @param discard what speaks for a discard
 * @param why one sentence of the policy itself
 */
record PolicyLine(
    String label, boolean must, String measured, String advance, String discard, String why) {

  private static final Measures MEASURES = new Measures(ZoneOffset.UTC);
  private static final String NEVER = "never by itself";

  /**
   * @param metric none for what a person attests
   * @param trait where the metric is about one; lines without a unit of the metric are in its unit
   */
  static PolicyLine of(Criterion asked, @Nullable Metric metric, @Nullable Trait trait) {
    String unit = metric == null ? "" : metric.unit();
    return new PolicyLine(
        asked.label(),
        asked.isMust(),
        measured(asked, metric, trait),
        advance(asked, unit) + from(asked),
        asked.isMust() ? discard(asked, unit) : "never: it only informs",
        asked.why());
  }

  private static String measured(Criterion asked, @Nullable Metric metric, @Nullable Trait trait) {
    if (asked.ask() == null) {
      return "A person looks and says so.";
    }
    List<String> parts = new ArrayList<>();
    parts.add(metric == null ? "Nothing here computes this metric." : metric.definition());
    if (trait != null) {
      parts.add(
          "Trait: %s%s.".formatted(trait.name(), trait.unit() == null ? "" : ", " + trait.unit()));
    }
    if (asked.ask().check() != null) {
      parts.add("Beside the %s.".formatted(asked.ask().check().word()));
    }
    return String.join(" ", parts);
  }

  private static String advance(Criterion asked, String unit) {
    return switch (asked.kind()) {
      case ATTESTED -> "it is said to hold";
      case FACT -> reach(asked.direction(), asked.advance().line(), unit);
      case CHANCE ->
          "%s with a chance of %s or more"
              .formatted(
                  reach(asked.direction(), asked.advance().line(), unit),
                  chance(asked.advance().chance()));
      case ALLOWANCE ->
          "no more are lost than chance allows a lot that loses %s"
              .formatted(value(asked.allowedPercent(), "%"));
    };
  }

  private static String discard(Criterion asked, String unit) {
    BigDecimal end = asked.discard().line();
    String rule =
        switch (asked.kind()) {
          case ATTESTED -> NEVER;
          case FACT -> end == null ? NEVER : beyond(asked.direction(), end, unit);
          case CHANCE ->
              end == null
                  ? NEVER
                  : "the chance of %s is %s or less"
                      .formatted(
                          reach(asked.direction(), end, unit), chance(asked.discard().chance()));
          case ALLOWANCE -> "more are lost than that";
        };
    return rule.equals(NEVER) ? rule : rule + occasions(asked);
  }

  private static String occasions(Criterion asked) {
    int usual = Objects.requireNonNullElse(asked.occasions().usual(), 1);
    Integer outstanding = asked.occasions().outstanding();
    String often = usual > 1 ? ", on %d valid occasions in a row".formatted(usual) : "";
    return outstanding == null || outstanding == usual
        ? often
        : often + "; on %d in a row where something outstanding is marked".formatted(outstanding);
  }

  private static String from(Criterion asked) {
    LeastEvidence least = asked.least();
    boolean bench = asked.gate() == Stage.PROPAGATION;
    List<String> parts = new ArrayList<>();
    add(parts, least.units(), bench ? "cutting" : "plant");
    add(parts, least.replicates(), bench ? "tray" : "plot");
    add(parts, least.sites(), "site");
    add(parts, least.seasons(), "season");
    return parts.isEmpty() ? "" : ", from " + String.join(" and ", parts) + " or more";
  }

  private static void add(List<String> parts, @Nullable Integer least, String what) {
    if (least != null) {
      parts.add(MEASURES.counted(least, what, what + "s"));
    }
  }

  private static String reach(Direction direction, @Nullable BigDecimal line, String unit) {
    if (unit.equals(Metric.YES_OR_NO)) {
      return "yes";
    }
    return direction.word() + " " + value(line, unit);
  }

  private static String beyond(Direction direction, BigDecimal line, String unit) {
    if (unit.equals(Metric.YES_OR_NO)) {
      return "no";
    }
    return (direction == Direction.AT_LEAST ? "below " : "above ") + value(line, unit);
  }

  private static String value(@Nullable BigDecimal value, String unit) {
    BigDecimal bare = value == null ? BigDecimal.ZERO : value.stripTrailingZeros();
    return MEASURES.quantity(bare, Math.max(0, bare.scale()), unit);
  }

  private static String chance(@Nullable BigDecimal chance) {
    return MEASURES.number(chance, 2);
  }
}
