package trialwood.propagation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.InPercent;
import trialwood.evidence.Metric;

/** What the counted trays say: rooting, and life off the mist. The tray is the replicate. */
@Component
class RootingEvidence implements EvidenceSource {

  private static final double LEVEL = 0.95;
  private static final Metric ROOTED =
      new Metric("propagation.rooted", "Rooted of stuck", "%", "Rooted ÷ stuck.");
  private static final Metric AGAINST_CHECK =
      new Metric(
          "propagation.against-check",
          "Rooted, against the bench check",
          "% points",
          "Rooted ÷ stuck less the bench check's in the same run.");
  private static final Metric CHECK =
      new Metric(
          "propagation.check-rooted",
          "Bench check of the run",
          "%",
          "Rooted ÷ stuck of the bench check in the run that counts.");
  private static final Metric OFF_THE_MIST =
      new Metric(
          "propagation.off-the-mist",
          "Survival off the mist",
          "%",
          "Alive 14 days after the last mist ÷ rooted.");
  private static final Metric WEANED =
      new Metric(
          "propagation.weaned-of-stuck",
          "Weaned of stuck",
          "%",
          "Alive 14 days after the last mist ÷ stuck.");
  private static final Metric ROOT_SCORE =
      new Metric("propagation.root-score", "Root score", "", "Mean root score of the trays.");

  private static final Map<Metric, Function<RunResult, Evidence>> ANSWERS =
      Map.of(
          ROOTED, RootingEvidence::rooted,
          AGAINST_CHECK, RootingEvidence::againstCheck,
          CHECK, RootingEvidence::check,
          OFF_THE_MIST, RootingEvidence::offTheMist,
          WEANED, RootingEvidence::weanedOfStuck,
          ROOT_SCORE, RootingEvidence::rootScore);

  private final TrayOutcomes outcomes;
  private final TrayLikeness likeness;

  RootingEvidence(TrayOutcomes outcomes, TrayLikeness likeness) {
    this.outcomes = outcomes;
    this.likeness = likeness;
  }

  @Override
  public Set<Metric> metrics() {
    return ANSWERS.keySet();
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    return evidence(Set.of(ask), accessions, asOf).getOrDefault(ask, Map.of());
  }

  /** Every answer is read off the same trays. */
  @Override
  public Map<Ask, Map<UUID, Evidence>> evidence(
      Set<Ask> asks, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, List<RunResult>> runs =
        RunResult.byAccession(outcomes.of(accessions, asOf), likeness.prior(asOf));
    Map<Ask, Map<UUID, Evidence>> answers = new HashMap<>();
    for (Ask ask : asks) {
      Function<RunResult, Evidence> answer = answer(ask);
      Map<UUID, Evidence> found = new HashMap<>();
      for (UUID accession : accessions) {
        List<RunResult> own = runs.getOrDefault(accession, List.of());
        RunResult.thatCounts(own).ifPresent(last -> found.put(accession, tell(last, own, answer)));
      }
      answers.put(ask, found);
    }
    return answers;
  }

  private static Function<RunResult, Evidence> answer(Ask ask) {
    return ANSWERS.entrySet().stream()
        .filter(known -> known.getKey().key().equals(ask.metricKey()))
        .findFirst()
        .orElseThrow()
        .getValue();
  }

  /** The run that counts, with every valid run as an occasion of its own. */
  private static Evidence tell(
      RunResult last, List<RunResult> runs, Function<RunResult, Evidence> answer) {
    Evidence told = answer.apply(last);
    List<Evidence> occasions =
        runs.stream()
            .filter(RunResult::isValid)
            .map(run -> run.equals(last) ? told : answer.apply(run))
            .filter(Evidence::isRecorded)
            .toList();
    return told.isRecorded() ? told.onOccasions(occasions) : told;
  }

  private static String byTrays(TrayPrior prior) {
    return "Beta-binomial posterior over the trays of the last run that counts; " + before(prior);
  }

  /** What was believed before the count: kept with a decision, for the setting may change. */
  private static String before(TrayPrior prior) {
    BigDecimal weight = BigDecimal.valueOf(prior.likeness().b()).setScale(1, RoundingMode.HALF_UP);
    return "p ~ Beta(½, ½), tray likeness ~ Beta(1, %s)."
        .formatted(weight.stripTrailingZeros().toPlainString());
  }

  private static Evidence rooted(RunResult run) {
    EvidenceBuilder told =
        Evidence.of(100 * run.share(), ROOTED.unit(), run.countedOn(), byTrays(run.prior()))
            .from(run.stuck(), run.trays().size(), counted(run.rooted(), run.stuck(), run))
            .believing(new InPercent(run.posterior()), LEVEL);
    run.disagreement().ifPresent(told::remarking);
    return guarded(told, run);
  }

  private static Evidence againstCheck(RunResult run) {
    if (run.checkTrays().isEmpty()) {
      return Evidence.noRecord("No bench check stands in run " + run.run() + ".");
    }
    RateDifference difference = RateDifference.between(run.posterior(), run.checkPosterior());
    EvidenceBuilder told =
        Evidence.of(
                100 * (run.share() - run.checkShare().orElseThrow()),
                AGAINST_CHECK.unit(),
                run.countedOn(),
                "Difference of the two posteriors over trays, candidate less bench check; "
                    + before(run.prior()))
            .from(run.stuck(), run.trays().size(), counted(run.rooted(), run.stuck(), run))
            .believing(new InPercent(difference), LEVEL)
            .comparedWith("bench check of run " + run.run());
    return guarded(told, run);
  }

  private static Evidence check(RunResult run) {
    if (run.checkTrays().isEmpty()) {
      return Evidence.noRecord("No bench check stands in run " + run.run() + ".");
    }
    int stuck = run.check().stuck();
    int rooted = run.check().rooted();
    return cite(
            Evidence.of(
                    100.0 * rooted / stuck,
                    CHECK.unit(),
                    run.countedOn(),
                    "Rooted ÷ stuck, counted.")
                .from(
                    stuck,
                    run.checkTrays().size(),
                    "%d of %d, run %s %s"
                        .formatted(rooted, stuck, run.run(), run.isValid() ? "valid" : "void")),
            run.run(),
            run.checkTrays())
        .build();
  }

  private static Evidence offTheMist(RunResult run) {
    List<TrayOutcome> weaned = run.weaned();
    int moved = weaned.stream().mapToInt(TrayOutcome::leftRooted).sum();
    return moved == 0
        ? Evidence.noRecord("Nobody has counted 14 days after the last mist.")
        : survival(run, weaned, moved, OFF_THE_MIST, TrayOutcome::leftRooted);
  }

  private static Evidence weanedOfStuck(RunResult run) {
    List<TrayOutcome> weaned = run.weaned();
    int stuck = weaned.stream().mapToInt(TrayOutcome::stuck).sum();
    return stuck == 0
        ? Evidence.noRecord("Nobody has counted 14 days after the last mist.")
        : survival(run, weaned, stuck, WEANED, TrayOutcome::stuck);
  }

  private static Evidence survival(
      RunResult run,
      List<TrayOutcome> weaned,
      int of,
      Metric metric,
      Function<TrayOutcome, Integer> whole) {
    int alive = weaned.stream().mapToInt(tray -> alive(tray)).sum();
    TrayPosterior posterior =
        TrayPosterior.of(
            weaned.stream()
                .filter(tray -> whole.apply(tray) > 0)
                .map(tray -> new TrayCount(alive(tray), whole.apply(tray)))
                .toList());
    return guarded(
        Evidence.of(100.0 * alive / of, metric.unit(), run.countedOn(), byTrays(TrayPrior.USUAL))
            .from(of, weaned.size(), counted(alive, of, run))
            .believing(new InPercent(posterior), LEVEL),
        run);
  }

  private static int alive(TrayOutcome tray) {
    return tray.alive14() == null ? 0 : tray.alive14();
  }

  private static Evidence rootScore(RunResult run) {
    List<Integer> scores =
        run.trays().stream()
            .filter(tray -> tray.rootScore() != null)
            .map(TrayOutcome::rootScore)
            .toList();
    if (scores.isEmpty()) {
      return Evidence.noRecord("No root score was noted in run " + run.run() + ".");
    }
    double mean = scores.stream().mapToInt(Integer::intValue).average().orElseThrow();
    return guarded(
        Evidence.of(mean, ROOT_SCORE.unit(), run.countedOn(), "Plain mean of the trays' scores.")
            .from(
                run.stuck(),
                scores.size(),
                scores.stream().map(String::valueOf).collect(Collectors.joining(", "))),
        run);
  }

  private static String counted(int hits, int of, RunResult run) {
    return "%d of %d, %s, run %s"
        .formatted(
            hits,
            of,
            run.trays().size() == 1 ? "1 tray" : run.trays().size() + " trays",
            run.run());
  }

  private static Evidence guarded(EvidenceBuilder told, RunResult run) {
    if (!run.isValid()) {
      told.barringDiscard(run.voidRemark());
    }
    return cite(told, run.run(), run.trays()).build();
  }

  private static EvidenceBuilder cite(EvidenceBuilder told, String run, List<TrayOutcome> trays) {
    told.citing("run " + run, "/bench/runs/" + run);
    trays.forEach(tray -> told.citing("tray " + tray.tray(), "/bench/trays/" + tray.tray()));
    return told;
  }
}
