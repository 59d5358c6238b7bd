package trialwood.propagation;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayDispersion;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;

/**
 * What one run says of one accession.
 *
 * @param trays its trays that count; never empty
 * @param checkTrays the bench check's trays that count
 * @param prior of the trays, before they were counted
 */
record RunResult(
    String run,
    LocalDate runFrom,
    int floorPercent,
    List<TrayOutcome> trays,
    List<TrayOutcome> checkTrays,
    TrayPrior prior) {

  /** The runs of an accession, newest first, for those who ask for counts alone. */
  static List<RunResult> of(UUID accession, List<TrayOutcome> outcomes) {
    return of(accession, outcomes, TrayPrior.USUAL);
  }

  /** The runs of an accession, newest first. */
  static List<RunResult> of(UUID accession, List<TrayOutcome> outcomes, TrayPrior prior) {
    return outcomes.stream()
        .filter(TrayOutcome::counts)
        .collect(Collectors.groupingBy(TrayOutcome::runId))
        .values()
        .stream()
        .map(
            run ->
                new RunResult(
                    run.get(0).run(),
                    run.get(0).runFrom(),
                    run.get(0).floorPercent(),
                    run.stream().filter(tray -> tray.accessionId().equals(accession)).toList(),
                    run.stream().filter(TrayOutcome::isCheck).toList(),
                    prior))
        .filter(result -> !result.trays().isEmpty())
        .sorted(Comparator.comparing(RunResult::runFrom).reversed())
        .toList();
  }

  /** The run that counts: the last valid one, or the last of all where none is valid. */
  static Optional<RunResult> thatCounts(List<RunResult> runs) {
    return runs.stream().filter(RunResult::isValid).findFirst().or(() -> runs.stream().findFirst());
  }

  /** Whether the bench check reached its floor; a run without a check cannot show that it did. */
  boolean isValid() {
    return checkShare().orElse(0) * 100 >= floorPercent;
  }

  OptionalDouble checkShare() {
    int stuck = stuck(checkTrays);
    return stuck == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((double) rooted(checkTrays) / stuck);
  }

  int stuck() {
    return stuck(trays);
  }

  int rooted() {
    return rooted(trays);
  }

  double share() {
    return (double) rooted() / stuck();
  }

  TrayPosterior posterior() {
    return posteriorOf(trays);
  }

  TrayPosterior checkPosterior() {
    return posteriorOf(checkTrays);
  }

  /** Trays whose life off the mist was looked at. */
  List<TrayOutcome> weaned() {
    return trays.stream().filter(tray -> tray.alive14() != null).toList();
  }

  LocalDate countedOn() {
    return trays.stream().map(TrayOutcome::countedOn).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** What to say of trays that differ more than chance lets them; mostly nothing. */
  Optional<String> disagreement() {
    return TrayDispersion.of(counts(trays))
        .value()
        .filter(spread -> spread.pValue() < 0.01)
        .map(
            spread ->
                "The trays disagree: %s (χ² %.1f, %d df)."
                    .formatted(
                        trays.stream()
                            .map(tray -> String.valueOf(tray.rooted()))
                            .collect(Collectors.joining(", ")),
                        spread.chiSquare(),
                        spread.degreesOfFreedom()));
  }

  /** Why nobody is discarded on this run. */
  String voidRemark() {
    return checkShare().isEmpty()
        ? "Run %s is void for discards: no bench check stands in it.".formatted(run)
        : "Run %s is void for discards: its bench check rooted %d of %d, below %d %%."
            .formatted(run, rooted(checkTrays), stuck(checkTrays), floorPercent);
  }

  private static int stuck(List<TrayOutcome> trays) {
    return trays.stream().mapToInt(TrayOutcome::stuck).sum();
  }

  private static int rooted(List<TrayOutcome> trays) {
    return trays.stream().mapToInt(TrayOutcome::rooted).sum();
  }

  private TrayPosterior posteriorOf(List<TrayOutcome> trays) {
    return TrayPosterior.of(counts(trays), prior);
  }

  private static List<TrayCount> counts(List<TrayOutcome> trays) {
    return trays.stream().map(tray -> new TrayCount(tray.rooted(), tray.stuck())).toList();
  }
}
