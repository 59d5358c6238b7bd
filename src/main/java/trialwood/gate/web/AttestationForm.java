package trialwood.gate.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.gate.Attestation;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.web.Form;
import trialwood.web.Typed;

/** What a person attests, as it is typed. */
record AttestationForm(
    @Nullable UUID formKey,
    @Nullable Boolean holds,
    @Nullable String note,
    @Nullable String on,
    @Nullable String expiresOn,
    @Nullable UUID by)
    implements Form {

  static AttestationForm fresh(LocalDate today, @Nullable UUID by) {
    return new AttestationForm(UUID.randomUUID(), null, "", today.toString(), "", by);
  }

  /**
   * @throws trialwood.record.Refused when something is lacking or cannot be read
   */
  Attestation attestation(UUID accessionId, String criterion, LocalDate today, Recorder recorder) {
    LocalDate said = date(on, today);
    LocalDate expires = date(expiresOn, today);
    Check.that()
        .holds(holds != null, "holds", "Say yes or no.")
        .holds(
            said != null && !said.isAfter(today),
            "on",
            "Give the day on which it was seen, not a day to come.")
        .holds(
            expires != null || expiresOn == null || expiresOn.isBlank(),
            "expiresOn",
            "This is not a date. Write it like 14 May 2027.")
        .holds(by != null, "by", "Pick who says so.")
        .orRefuse();
    return new Attestation(
        accessionId,
        criterion,
        Objects.requireNonNull(said),
        Objects.requireNonNull(holds),
        expires,
        note == null ? "" : note,
        recorder.by(by));
  }

  private static @Nullable LocalDate date(@Nullable String typed, LocalDate today) {
    return Typed.date(typed == null ? "" : typed, today).orElse(null);
  }
}
