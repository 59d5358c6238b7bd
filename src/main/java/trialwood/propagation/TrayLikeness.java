package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayHistory;
import trialwood.analysis.rate.TrayPrior;

/**
 * How alike cuttings of one tray are before a run is counted: the usual value, or what the
 * nursery's own trays teach, whichever the setting says. Which, and why the usual one stands at
 * first: decision 0009.
 */
@Component
public class TrayLikeness {

  /** What is believed of ρ. */
  enum Setting {
    USUAL,
    OWN
  }

  /** Counts, and what they teach: a new count, a ruling or another day makes other counts. */
  private record Taught(Map<List<UUID>, List<TrayCount>> batches, TrayHistory history) {}

  private final TrayOutcomes outcomes;
  private final Setting setting;
  private volatile @Nullable Taught taught;

  TrayLikeness(TrayOutcomes outcomes, @Value("${trialwood.tray-likeness:usual}") Setting setting) {
    this.outcomes = outcomes;
    this.setting = setting;
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

  /** The prior in force; asks the records only where the setting says so. */
  TrayPrior prior(LocalDate asOf) {
    return setting == Setting.OWN ? history(asOf).prior() : TrayPrior.USUAL;
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
    return setting == Setting.OWN
        ? taught + ", which is used here."
        : taught
            + "; the usual %.3f is used until the setting tray-likeness says own."
                .formatted(TrayPrior.USUAL.likeness().mean());
  }
}
