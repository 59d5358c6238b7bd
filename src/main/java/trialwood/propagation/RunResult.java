package trialwood.propagation;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import trialwood.analysis.rate.TrayDispersion;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;

/**
 * What one run says of one accession.
 *
 * @param counted its trays that count; never empty
 * @param check the bench check's trays that count
 */
record RunResult(
    String run, LocalDate runFrom, int floorPercent, CountedTrays counted, CountedTrays check) {

  /** The runs of an accession, newest first, for those who ask for counts alone. */
  static List<RunResult> of(UUID accession, List<TrayOutcome> outcomes) {
    return byAccession(outcomes, TrayPrior.USUAL).getOrDefault(accession, List.of());
  }

  /** The runs of each accession, newest first; all of a run share its bench check. */
  static Map<UUID, List<RunResult>> byAccession(List<TrayOutcome> outcomes, TrayPrior prior) {
    List<TrayOutcome> counting = outcomes.stream().filter(TrayOutcome::counts).toList();
    Map<UUID, CountedTrays> checks =
        counting.stream()
            .filter(TrayOutcome::isCheck)
            .collect(
                Collectors.groupingBy(
                    TrayOutcome::runId,
                    Collectors.collectingAndThen(
                        Collectors.toList(), trays -> new CountedTrays(trays, prior))));
    CountedTrays none = new CountedTrays(List.of(), prior);
    return counting.stream()
        .collect(
            Collectors.groupingBy(
                TrayOutcome::accessionId,
                Collectors.collectingAndThen(
                    Collectors.toList(),
                    own -> byRun(own, prior, run -> checks.getOrDefault(run, none)))));
  }

  private static List<RunResult> byRun(
      List<TrayOutcome> own, TrayPrior prior, Function<UUID, CountedTrays> check) {
    return own.stream().collect(Collectors.groupingBy(TrayOutcome::runId)).entrySet().stream()
        .map(
            run -> {
              TrayOutcome any = run.getValue().get(0);
              return new RunResult(
                  any.run(),
                  any.runFrom(),
                  any.floorPercent(),
                  new CountedTrays(run.getValue(), prior),
                  check.apply(run.getKey()));
            })
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
    return check.stuck() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((double) check.rooted() / check.stuck());
  }

  List<TrayOutcome> trays() {
    return counted.trays();
  }

  List<TrayOutcome> checkTrays() {
    return check.trays();
  }

  TrayPrior prior() {
    return counted.prior();
  }

  int stuck() {
    return counted.stuck();
  }

  int rooted() {
    return counted.rooted();
  }

  double share() {
    return (double) rooted() / stuck();
  }

  TrayPosterior posterior() {
    return counted.posterior();
  }

  TrayPosterior checkPosterior() {
    return check.posterior();
  }

  /** Trays whose life off the mist was looked at. */
  List<TrayOutcome> weaned() {
    return trays().stream().filter(tray -> tray.alive14() != null).toList();
  }

  LocalDate countedOn() {
    return trays().stream()
        .map(TrayOutcome::countedOn)
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** What to say of trays that differ more than chance lets them; mostly nothing. */
  Optional<String> disagreement() {
    return TrayDispersion.of(counted.counts())
        .value()
        .filter(spread -> spread.pValue() < 0.01)
        .map(
            spread ->
                "The trays disagree: %s (χ² %.1f, %d df)."
                    .formatted(
                        trays().stream()
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
            .formatted(run, check.rooted(), check.stuck(), floorPercent);
  }
}
