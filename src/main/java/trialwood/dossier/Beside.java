package trialwood.dossier;

import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;

/**
 * A trait of the candidate beside a known variety: the last season in which both were seen, on the
 * same kind of unit and at the same sites.
 *
 * @param variety its code
 */
public record Beside(String variety, Sample own, Sample other) {

  private static final double LEVEL = 0.95;

  /** Whether both were measured in numbers, so that there is a difference to ask for. */
  public boolean isMeasured() {
    return own.numbers() != null && other.numbers() != null;
  }

  /** Candidate − variety, in the unit of the trait; none unless both have two plants or more. */
  public @Nullable Double difference() {
    return answer().map(SampleDifference::mean).value().orElse(null);
  }

  /** Its 95 % interval; none where {@link #lacking()} says why. */
  public @Nullable Interval interval() {
    return answer().map(it -> it.interval(LEVEL)).value().orElse(null);
  }

  /** Why there is no difference between two that were measured. */
  public @Nullable String lacking() {
    return answer().lack().orElse(null);
  }

  private Answer<SampleDifference> answer() {
    PlantSample mine = own.numbers();
    PlantSample its = other.numbers();
    if (mine == null || its == null) {
      return Answer.lacking("Not measured in numbers.");
    }
    Answer<SampleDifference> answer = SampleDifference.between(mine, its);
    return answer instanceof Answer.Known<SampleDifference> known && known.answer().pooledSd() == 0
        ? Answer.lacking("The plants of each are all alike: no spread to judge a difference by.")
        : answer;
  }
}
