package trialwood.gate.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.gate.Choice;
import trialwood.gate.Ruling;
import trialwood.record.Check;
import trialwood.web.Form;
import trialwood.web.Typed;

/**
 * A decision as it is typed. No choice is taken beforehand.
 *
 * @param on day of the decision
 * @param by id of the person who decides
 */
record DecisionForm(
    @Nullable UUID formKey,
    @Nullable Choice choice,
    @Nullable String reason,
    @Nullable String holdUntil,
    @Nullable String on,
    @Nullable UUID by)
    implements Form {

  static DecisionForm fresh(LocalDate on, @Nullable UUID by) {
    return new DecisionForm(UUID.randomUUID(), null, "", "", on.toString(), by);
  }

  /**
   * @throws trialwood.record.Refused when something is lacking or cannot be read
   */
  Ruling ruling(UUID accessionId, Stage gate, LocalDate today) {
    LocalDate decided = date(on, today);
    LocalDate until = date(holdUntil, today);
    Check.that()
        .holds(choice != null, "choice", "Choose advance, hold or discard.")
        .holds(decided != null, "on", "Give the day of the decision, for example 14 May 2026.")
        .holds(
            until != null || holdUntil == null || holdUntil.isBlank(),
            "holdUntil",
            "This is not a date. Write it like 14 May 2027.")
        .holds(by != null, "by", "Pick who decides.")
        .orRefuse();
    return new Ruling(
        accessionId,
        gate,
        Objects.requireNonNull(choice),
        reason,
        until,
        by,
        Objects.requireNonNull(decided));
  }

  private static @Nullable LocalDate date(@Nullable String typed, LocalDate today) {
    return Typed.date(typed == null ? "" : typed, today).orElse(null);
  }
}
