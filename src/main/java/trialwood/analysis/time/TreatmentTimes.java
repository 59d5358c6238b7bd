package trialwood.analysis.time;

import java.util.List;
import trialwood.analysis.Refuse;

/**
 * The times of one treatment's cuttings.
 *
 * @param treatment its name
 * @param looks at least one
 */
public record TreatmentTimes(String treatment, List<RootedBetween> looks) {

  public TreatmentTimes {
    looks = List.copyOf(looks);
    Refuse.unless(!looks.isEmpty(), "Nobody has looked at %s.", treatment);
  }

  /** The share never seen to root. */
  double unrooted() {
    double all = looks.stream().mapToDouble(RootedBetween::cuttings).sum();
    return looks.stream().filter(look -> !look.rooted()).mapToDouble(RootedBetween::cuttings).sum()
        / all;
  }
}
