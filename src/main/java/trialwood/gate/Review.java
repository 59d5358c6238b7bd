package trialwood.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import trialwood.candidate.Stage;

/**
 * What the records say of one candidate at its gate on a day. A report, not a decision.
 *
 * @param policy the policy it was held against
 * @param findings one for each criterion of the gate, in the policy's order
 * @param provisional the candidate's identity waits to be confirmed in flower
 */
public record Review(
    UUID accessionId,
    Stage gate,
    GatePolicy policy,
    LocalDate asOf,
    List<Finding> findings,
    boolean provisional) {

  public Review {
    findings = List.copyOf(findings);
  }

  /** Whether it is of the candidate, gate and day that the ruling is about. */
  boolean isOf(Ruling ruling) {
    return accessionId.equals(ruling.accessionId())
        && gate == ruling.gate()
        && asOf.equals(ruling.on());
  }

  /** What the records speak for. */
  public Choice line() {
    if (provisional || musts().isEmpty()) {
      return Choice.HOLD;
    }
    if (musts().stream().anyMatch(must -> must.verdict() == Verdict.FALLS_SHORT)) {
      return Choice.DISCARD;
    }
    return missing().isEmpty() ? Choice.ADVANCE : Choice.HOLD;
  }

  /** The musts that do not say yes. */
  public List<Finding> missing() {
    return musts().stream().filter(must -> must.verdict() != Verdict.MEETS).toList();
  }

  /** Why the line is what it is, in a sentence or two. */
  public String because() {
    if (provisional) {
      return "The identity is provisional: somebody must confirm it in flower before it passes.";
    }
    if (musts().isEmpty()) {
      return "The policy asks nothing at this gate.";
    }
    if (line() == Choice.ADVANCE) {
      String met =
          musts().size() == 1
              ? "Its one must is met."
              : "All %d musts are met.".formatted(musts().size());
      return met + unmetPreferences();
    }
    if (line() == Choice.DISCARD) {
      return labels(Verdict.FALLS_SHORT, musts(), "Falls short: ");
    }
    return (labels(Verdict.NOT_SETTLED, musts(), "Not settled: ")
            + " "
            + labels(Verdict.NO_RECORD, musts(), "No record: "))
        .strip();
  }

  private String unmetPreferences() {
    List<Finding> unmet =
        findings.stream()
            .filter(f -> !f.criterion().isMust() && f.verdict() != Verdict.MEETS)
            .toList();
    return unmet.isEmpty() ? "" : " To talk about: " + labels(unmet) + ".";
  }

  private List<Finding> musts() {
    return findings.stream().filter(finding -> finding.criterion().isMust()).toList();
  }

  private static String labels(Verdict verdict, List<Finding> findings, String lead) {
    List<Finding> such = findings.stream().filter(f -> f.verdict() == verdict).toList();
    return such.isEmpty() ? "" : lead + labels(such) + ".";
  }

  private static String labels(List<Finding> findings) {
    return findings.stream().map(f -> f.criterion().label()).collect(Collectors.joining("; "));
  }
}
