package trialwood.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Belief;
import trialwood.analysis.rate.Allowance;
import trialwood.evidence.Evidence;
import trialwood.evidence.Metric;

/**
 * Holds one criterion against one candidate's evidence. First whether it speaks for going on; then,
 * by a rule of its own, whether it speaks for a discard: on so many valid occasions in a row, each
 * with enough evidence, and only where no guard forbids it. Otherwise it is not settled.
 *
 * @param outstanding the breeder marked something outstanding in the candidate
 */
record Judge(Criterion criterion, Evidence evidence, boolean outstanding) {

  Finding finding() {
    if (evidence.moot()) {
      return answer(Verdict.MEETS, "There is nothing to hold against the line.");
    }
    if (!evidence.isRecorded()) {
      return answer(Verdict.NO_RECORD, evidence.method());
    }
    return switch (criterion.kind()) {
      case FACT -> fact();
      case CHANCE -> chance();
      case ALLOWANCE -> allowance();
      case ATTESTED -> throw new IllegalStateException("Records do not answer for a person.");
    };
  }

  private Finding fact() {
    double reach = line(criterion.advance());
    String value = Words.value(value(evidence), evidence.unit());
    if (criterion.direction().reaches(value(evidence), reach)) {
      return good(
          isYesOrNo() ? "The records say yes." : value + " is on the good side of the line.");
    }
    BigDecimal end = criterion.discard().line();
    String shortOf = isYesOrNo() ? "The records say no." : value + " does not reach the line.";
    if (end == null) {
      return answer(
          Verdict.NOT_SETTLED, shortOf + " By itself this criterion never speaks for a discard.");
    }
    return poor(
        isYesOrNo()
            ? shortOf
            : shortOf + " Hope ends at %s.".formatted(Words.line(end, evidence.unit())),
        occasion -> !criterion.direction().reaches(value(occasion), end.doubleValue()));
  }

  private Finding chance() {
    Belief belief = evidence.belief();
    if (belief == null) {
      return answer(
          Verdict.NOT_SETTLED, "The records give a value, but do not say how sure it is.");
    }
    double chance = chance(belief, criterion.advance());
    String sentence =
        "The true value is %s %s with chance %s; %s is asked."
            .formatted(
                criterion.direction().word(),
                Words.line(criterion.advance().line(), evidence.unit()),
                Words.chance(chance),
                Words.asked(criterion.advance().chance()));
    if (chance >= asked(criterion.advance())) {
      return good(sentence);
    }
    if (criterion.discard().line() == null) {
      return answer(Verdict.NOT_SETTLED, sentence);
    }
    String hope =
        " It is %s %s with chance %s; a discard asks for %s or less."
            .formatted(
                criterion.direction().word(),
                Words.line(criterion.discard().line(), evidence.unit()),
                Words.chance(chance(belief, criterion.discard())),
                Words.asked(criterion.discard().chance()));
    return poor(
        sentence + hope,
        occasion ->
            occasion.belief() != null
                && chance(occasion.belief(), criterion.discard()) <= asked(criterion.discard()));
  }

  private Finding allowance() {
    if (evidence.n() < 1) {
      return answer(Verdict.NO_RECORD, "No plants are on record to lose any of.");
    }
    Allowance allowance = allowed(evidence);
    double rate = allowance.rate();
    String risks =
        ("%d of %d may be lost. A lot that loses %s in truth is refused with chance %s; one that"
                + " loses twice as many passes with chance %s.")
            .formatted(
                allowance.allowed(),
                evidence.n(),
                Words.line(criterion.allowedPercent(), "%"),
                Words.chance(allowance.riskOfRefusing()),
                Words.chance(allowance.riskOfPassing(Math.min(1, 2 * rate))));
    Predicate<Evidence> tooMany = lot -> value(lot) > allowed(lot).allowed();
    return tooMany.test(evidence) ? poor(risks, tooMany) : good(risks);
  }

  /** The value is good; is there enough behind it? */
  private Finding good(String sentence) {
    String lacking = lacking(evidence);
    return lacking.isEmpty()
        ? answer(Verdict.MEETS, sentence)
        : answer(Verdict.NOT_SETTLED, sentence + tooLittle(lacking));
  }

  /** The value is not good; is it hopeless, often enough, beyond doubt? */
  private Finding poor(String sentence, Predicate<Evidence> hopeless) {
    if (!hopeless.test(evidence)) {
      String lacking = lacking(evidence);
      return answer(Verdict.NOT_SETTLED, sentence + (lacking.isEmpty() ? "" : tooLittle(lacking)));
    }
    if (evidence.discardBarred()) {
      return answer(Verdict.NOT_SETTLED, sentence + " Nobody is discarded by these records.");
    }
    String lacking = lacking(evidence);
    if (!lacking.isEmpty()) {
      return answer(Verdict.NOT_SETTLED, sentence + tooLittle(lacking));
    }
    int needed = criterion.occasions().needed(outstanding);
    long inARow =
        occasions().stream()
            .takeWhile(occasion -> hopeless.test(occasion) && lacking(occasion).isEmpty())
            .count();
    if (inARow < needed) {
      return answer(
          Verdict.NOT_SETTLED,
          sentence
              + " A discard asks for %d valid occasions in a row%s; this is %d."
                  .formatted(
                      needed, outstanding ? ", for something outstanding is marked" : "", inARow));
    }
    return answer(
        Verdict.FALLS_SHORT,
        sentence + (needed > 1 ? " So it was on %d valid occasions.".formatted(inARow) : ""));
  }

  private List<Evidence> occasions() {
    return evidence.occasions().isEmpty() ? List.of(evidence) : evidence.occasions();
  }

  private Finding answer(Verdict verdict, String because) {
    List<String> sentences = new ArrayList<>(List.of(because));
    sentences.addAll(evidence.remarks());
    return new Finding(criterion, verdict, found(), asked(), String.join(" ", sentences), evidence);
  }

  private String found() {
    if (evidence.moot() && evidence.counted() != null) {
      return evidence.counted();
    }
    if (!evidence.isRecorded()) {
      return "no record";
    }
    String value = Words.value(value(evidence), evidence.unit());
    if (criterion.kind() == Kind.ALLOWANCE) {
      return "%s of %d lost".formatted(value, evidence.n());
    }
    return evidence.counted() == null ? value : value + " · " + evidence.counted();
  }

  private String asked() {
    String line =
        switch (criterion.kind()) {
          case ALLOWANCE ->
              "no more lost than %s allows".formatted(Words.line(criterion.allowedPercent(), "%"));
          case CHANCE ->
              "%s with chance %s".formatted(reach(), Words.asked(criterion.advance().chance()));
          default -> reach();
        };
    String least = criterion.least().asked(criterion.gate());
    return least.isEmpty() ? line : line + " from " + least;
  }

  private boolean isYesOrNo() {
    return evidence.unit().equals(Metric.YES_OR_NO);
  }

  private String reach() {
    if (isYesOrNo()) {
      return Words.value(number(criterion.advance().line()), evidence.unit());
    }
    return criterion.direction().word()
        + " "
        + Words.line(criterion.advance().line(), evidence.unit());
  }

  private String lacking(Evidence of) {
    return criterion.least().lacking(criterion.gate(), of);
  }

  private static String tooLittle(String lacking) {
    return " The evidence is too thin: " + lacking + ".";
  }

  private double chance(Belief belief, Threshold threshold) {
    return criterion.direction().chance(belief, line(threshold));
  }

  private Allowance allowed(Evidence lot) {
    double percent = Objects.requireNonNull(criterion.allowedPercent()).doubleValue();
    return Allowance.of(lot.n(), percent / 100);
  }

  private static double value(Evidence of) {
    return Optional.ofNullable(of.value()).orElseThrow();
  }

  private static double line(Threshold threshold) {
    return number(threshold.line());
  }

  private static double asked(Threshold threshold) {
    return number(threshold.chance());
  }

  private static double number(@Nullable BigDecimal of) {
    return Objects.requireNonNull(of).doubleValue();
  }
}
