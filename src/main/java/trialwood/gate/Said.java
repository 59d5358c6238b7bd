package trialwood.gate;

import java.time.LocalDate;
import java.util.Optional;
import trialwood.evidence.Evidence;

/** Holds a criterion that a person attests against the latest that was said. */
final class Said {

  private static final String ASKED = "a person says so";

  private Said() {}

  /**
   * @param latest what was said last; empty when nobody has
   * @param initials of who said it
   */
  static Finding finding(
      Criterion criterion, Optional<Attestation> latest, String initials, LocalDate asOf) {
    return latest
        .map(said -> finding(criterion, said, initials, asOf))
        .orElseGet(() -> nothing(criterion));
  }

  private static Finding finding(
      Criterion criterion, Attestation said, String initials, LocalDate asOf) {
    String found =
        "%s · %s, %s".formatted(said.holds() ? "yes" : "no", initials, Words.date(said.onDate()));
    Evidence evidence =
        Evidence.of(said.holds() ? 1 : 0, "", said.onDate(), "Attested by " + initials + ".")
            .build();
    if (said.holds() && said.isExpired(asOf)) {
      String expired = " It expired on %s.".formatted(Words.date(said.expiresOn()));
      return new Finding(
          criterion, Verdict.NOT_SETTLED, found, ASKED, said.note() + expired, evidence);
    }
    Verdict verdict = said.holds() ? Verdict.MEETS : Verdict.FALLS_SHORT;
    return new Finding(criterion, verdict, found, ASKED, said.note(), evidence);
  }

  private static Finding nothing(Criterion criterion) {
    return new Finding(
        criterion,
        Verdict.NO_RECORD,
        "no record",
        ASKED,
        "Nobody has said so yet.",
        Evidence.noRecord("Nobody has said so yet."));
  }
}
