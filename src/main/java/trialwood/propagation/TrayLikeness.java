package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayHistory;
import trialwood.analysis.rate.TrayPrior;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.web.Measures;

/**
 * How alike cuttings of one tray are before a run is counted: the usual value, or what the
 * nursery's own trays teach, whichever its keepers chose. Why the usual one stands at first:
 * decision 0009; why the choice is a record: decision 0015.
 */
@Service
public class TrayLikeness {

  /** Counts, and what they teach: a new count, a ruling or another day makes other counts. */
  private record Taught(Map<List<UUID>, List<TrayCount>> batches, TrayHistory history) {}

  private final TrayOutcomes outcomes;
  private final TrayLikenessChoices choices;
  private final Recorder recorder;
  private final Clock clock;
  private volatile @Nullable Taught taught;

  TrayLikeness(TrayOutcomes outcomes, TrayLikenessChoices choices, Recorder recorder, Clock clock) {
    this.outcomes = outcomes;
    this.choices = choices;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** What stands from a day on; days before it keep what stood then. */
  @Transactional
  public void choose(LocalDate on, LikenessPrior prior, String reason, @Nullable UUID personId) {
    Check.that()
        .holds(
            !on.isAfter(LocalDate.now(clock)),
            "on",
            "This day is still to come: %s.".formatted(Measures.day(on)))
        .holds(
            prior != chosen(on),
            "prior",
            "This one is in force already: %s.".formatted(prior.word()))
        .orRefuse();
    choices.save(new TrayLikenessChoice(on, prior, reason, recorder.by(personId)));
  }

  /** What the keepers had chosen by a day. */
  public LikenessPrior chosen(LocalDate asOf) {
    return choices
        .findFirstByOnDateLessThanEqualOrderByOnDateDescIdDesc(asOf)
        .map(TrayLikenessChoice::prior)
        .orElse(LikenessPrior.USUAL);
  }

  /**
   * What all trays that count, closed up to a day, teach; batch by batch. The quadrature is done
   * again only when the counts are others than the last time.
   */
  public TrayHistory history(LocalDate asOf) {
    Map<List<UUID>, List<TrayCount>> batches =
        outcomes.all(asOf).stream()
            .filter(TrayOutcome::counts)
            .collect(
                Collectors.groupingBy(
                    tray -> List.of(tray.runId(), tray.accessionId()),
                    Collectors.mapping(
                        tray -> new TrayCount(tray.rooted(), tray.stuck()), Collectors.toList())));
    Taught last = taught;
    if (last == null || !last.batches().equals(batches)) {
      last = new Taught(batches, TrayHistory.of(List.copyOf(batches.values())));
      taught = last;
    }
    return last.history();
  }

  /** The prior in force; asks the trays only where the nursery's own was chosen. */
  TrayPrior prior(LocalDate asOf) {
    return chosen(asOf) == LikenessPrior.OWN ? history(asOf).prior() : TrayPrior.USUAL;
  }

  /** What the nursery's trays teach, and whether it is used, for those who read an interval. */
  public String sentence(LocalDate asOf) {
    TrayHistory own = history(asOf);
    if (own.standing() == TrayHistory.Standing.USUAL) {
      return "The nursery has closed %d trays in batches of two or more; from %d on they say how alike the cuttings of a tray are. Until then ρ has mean %.3f."
          .formatted(own.trays(), TrayHistory.TRAYS_NEEDED, own.meanLikeness());
    }
    String taught =
        "The nursery’s own %d trays in %d batches put the mean of ρ at %s%.3f"
            .formatted(
                own.trays(),
                own.batches(),
                own.standing() == TrayHistory.Standing.AT_A_BOUND ? "the bound of " : "",
                own.meanLikeness());
    return chosen(asOf) == LikenessPrior.OWN
        ? taught + ", which is used here."
        : taught
            + "; the usual %.3f is used, as the ground data say."
                .formatted(TrayPrior.USUAL.likeness().mean());
  }
}
