package trialwood.gate;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** One criterion as it was shown when the decision was made. */
@Embeddable
public record DecisionLine(
    String criterion,
    String label,
    @Enumerated(EnumType.STRING) Need need,
    @Enumerated(EnumType.STRING) Verdict verdict,
    String found,
    String asked,
    String because) {

  static DecisionLine of(Finding finding) {
    return new DecisionLine(
        finding.criterion().code(),
        finding.criterion().label(),
        finding.criterion().need(),
        finding.verdict(),
        cut(finding.found(), 300),
        cut(finding.asked(), 300),
        cut(finding.because(), 600));
  }

  private static String cut(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
  }
}
