package trialwood.propagation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;

/** Trays that were counted together; what they say of the true share is computed once, if asked. */
final class CountedTrays {

  private final List<TrayOutcome> trays;
  private final TrayPrior prior;
  private @Nullable TrayPosterior posterior;

  /**
   * @param prior before they were counted
   */
  CountedTrays(List<TrayOutcome> trays, TrayPrior prior) {
    this.trays = trays;
    this.prior = prior;
  }

  List<TrayOutcome> trays() {
    return trays;
  }

  TrayPrior prior() {
    return prior;
  }

  int stuck() {
    return trays.stream().mapToInt(TrayOutcome::stuck).sum();
  }

  int rooted() {
    return trays.stream().mapToInt(TrayOutcome::rooted).sum();
  }

  List<TrayCount> counts() {
    return trays.stream().map(tray -> new TrayCount(tray.rooted(), tray.stuck())).toList();
  }

  TrayPosterior posterior() {
    TrayPosterior known = posterior;
    if (known == null) {
      known = TrayPosterior.of(counts(), prior);
      posterior = known;
    }
    return known;
  }
}
