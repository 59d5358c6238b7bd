package trialwood.propagation;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayDispersion;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;
import trialwood.analysis.time.RootingLook;
import trialwood.analysis.time.RootingTime;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;

/** A run as one table: each accession with its trays, beside the bench check. */
@Component
public class RunTable {

  private final TrayOutcomes outcomes;
  private final RootingTimeEvidence times;
  private final TrayLikeness likeness;
  private final Accessions accessions;

  RunTable(
      TrayOutcomes outcomes,
      RootingTimeEvidence times,
      TrayLikeness likeness,
      Accessions accessions) {
    this.likeness = likeness;
    this.outcomes = outcomes;
    this.times = times;
    this.accessions = accessions;
  }

  /**
   * One accession in the run.
   *
   * @param trays rooted ones of each closed tray that counts, as people read them: 22 · 21 · 23
   * @param interval 95 % interval of the true share by the trays, as fractions
   * @param disagreement what the tray chi-square says where trays disagree clearly
   * @param days between which half of the lifted ones had rooted
   * @param times when the cuttings stuck had rooted; absent where nobody looked
   */
  public record Row(
      String code,
      @Nullable String talkName,
      boolean isCheck,
      String trays,
      int rooted,
      int stuck,
      @Nullable Interval interval,
      @Nullable String disagreement,
      String days,
      @Nullable RootingTimes times,
      int weanedAlive,
      int weanedOf) {

    /** Rooted ÷ stuck. */
    public double share() {
      return (double) rooted / stuck;
    }
  }

  /** Rows in the order of their share, the check first. */
  public List<Row> of(StickingRun run, Set<UUID> ids, LocalDate asOf) {
    List<TrayOutcome> closed =
        outcomes.ofRun(Objects.requireNonNull(run.id()), asOf).stream()
            .filter(TrayOutcome::counts)
            .toList();
    TrayPrior prior = likeness.prior(asOf);
    Map<UUID, List<LookSample>> looks =
        times.samples(ids, asOf).stream()
            .filter(look -> look.run().equals(run.code()))
            .collect(Collectors.groupingBy(LookSample::accessionId));
    Map<UUID, Accession> named =
        accessions
            .findAllById(closed.stream().map(TrayOutcome::accessionId).distinct().toList())
            .stream()
            .collect(Collectors.toMap(Accession::id, it -> it));
    return closed.stream()
        .collect(Collectors.groupingBy(TrayOutcome::accessionId))
        .entrySet()
        .stream()
        .map(
            each ->
                row(
                    Objects.requireNonNull(named.get(each.getKey())),
                    each.getValue(),
                    looks.getOrDefault(each.getKey(), List.of()),
                    prior))
        .sorted(
            Comparator.comparing(Row::isCheck)
                .thenComparing(Row::share)
                .reversed()
                .thenComparing(Row::code))
        .toList();
  }

  /** When one accession's cuttings in the run had rooted, so far; nothing where nobody looked. */
  public Optional<RootingTimes> times(StickingRun run, UUID accession, LocalDate asOf) {
    List<TrayOutcome> closed =
        outcomes.ofRun(Objects.requireNonNull(run.id()), asOf).stream()
            .filter(tray -> tray.counts() && tray.accessionId().equals(accession))
            .toList();
    List<LookSample> looks =
        times.samples(Set.of(accession), asOf).stream()
            .filter(look -> look.run().equals(run.code()))
            .toList();
    return RootingTimes.of(looks, closed);
  }

  private static Row row(
      Accession accession, List<TrayOutcome> trays, List<LookSample> looks, TrayPrior prior) {
    List<TrayCount> counts =
        trays.stream().map(tray -> new TrayCount(tray.rooted(), tray.stuck())).toList();
    List<TrayOutcome> weaned = trays.stream().filter(tray -> tray.alive14() != null).toList();
    return new Row(
        accession.code(),
        accession.talkName(),
        trays.get(0).isCheck(),
        trays.stream()
            .map(tray -> String.valueOf(tray.rooted()))
            .collect(Collectors.joining(" · ")),
        counts.stream().mapToInt(TrayCount::rooted).sum(),
        counts.stream().mapToInt(TrayCount::stuck).sum(),
        TrayPosterior.of(counts, prior).interval(0.95),
        disagreement(counts),
        days(looks),
        RootingTimes.of(looks, trays).orElse(null),
        weaned.stream().mapToInt(tray -> Objects.requireNonNullElse(tray.alive14(), 0)).sum(),
        weaned.stream().mapToInt(TrayOutcome::leftRooted).sum());
  }

  private static @Nullable String disagreement(List<TrayCount> counts) {
    return TrayDispersion.of(counts)
        .value()
        .filter(trays -> trays.pValue() < 0.01)
        .map(
            trays ->
                "The trays disagree (χ² %.1f, %d df)."
                    .formatted(trays.chiSquare(), trays.degreesOfFreedom()))
        .orElse(null);
  }

  private static String days(List<LookSample> looks) {
    RootingTime time =
        RootingTime.ofHalf(
            looks.stream()
                .map(look -> new RootingLook(look.day(), look.lifted(), look.rooted()))
                .toList());
    if (time instanceof RootingTime.Reached reached) {
      return "%d–%d".formatted(reached.after(), reached.by());
    }
    return time instanceof RootingTime.NotReached not ? "not by day " + not.lastDay() : "no looks";
  }
}
