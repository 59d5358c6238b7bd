package trialwood.dossier;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.TrialCell;

/**
 * A trait of the candidate beside a known variety: the last season in which both were seen, on the
 * same kind of unit and at the same sites. Over several sites the difference is the one of the
 * trial pages: taken at each site, sites weighing equally, its error how the sites differ. At one
 * site it is that of two plain means.
 *
 * @param variety its code
 * @param overSites the comparison where both stood at two sites or more; none otherwise, and where
 *     all sites agree to the last digit
 */
public record Beside(
    String variety, Sample own, Sample other, @Nullable CheckComparison overSites) {

  private static final double LEVEL = 0.95;
  private static final String CANDIDATE = "the candidate";

  /** Values of one season that are alike in place and kind of unit. */
  static Beside of(String variety, Collection<Seen> own, Collection<Seen> other) {
    List<TrialCell> cells = new ArrayList<>(cells(CANDIDATE, own));
    cells.addAll(cells(variety, other));
    return new Beside(
        variety,
        Sample.of(own),
        Sample.of(other),
        CheckComparison.of(cells, CANDIDATE, variety, Better.HIGHER)
            .value()
            .filter(it -> belief(it).filter(mean -> mean.standardError() > 0).isPresent())
            .orElse(null));
  }

  private static List<TrialCell> cells(String entry, Collection<Seen> seen) {
    Map<String, List<Seen>> byPlace =
        seen.stream().filter(it -> it.number() != null).collect(Collectors.groupingBy(Seen::place));
    return byPlace.entrySet().stream()
        .map(
            at -> {
              PlantSample units = Objects.requireNonNull(Sample.of(at.getValue()).numbers());
              int season = at.getValue().get(0).season();
              return new TrialCell(entry, at.getKey(), season, units.mean(), units.n());
            })
        .toList();
  }

  /** Whether both were measured in numbers, so that there is a difference to ask for. */
  public boolean isMeasured() {
    return own.numbers() != null && other.numbers() != null;
  }

  /** Candidate − variety, in the unit of the trait; none unless both have two plants or more. */
  public @Nullable Double difference() {
    return overSites == null
        ? plain().map(SampleDifference::mean).value().orElse(null)
        : Double.valueOf(overSites.average());
  }

  /** Its 95 % interval; none where {@link #lacking()} says why. */
  public @Nullable Interval interval() {
    return overSites == null
        ? plain().map(it -> it.interval(LEVEL)).value().orElse(null)
        : belief(overSites).orElseThrow().interval(LEVEL);
  }

  /** Which of the two differences it is. */
  public String manner() {
    return overSites == null ? "plain means" : "over %d sites".formatted(overSites.sites().size());
  }

  /** Why there is no difference between two that were measured. */
  public @Nullable String lacking() {
    return overSites == null ? plain().lack().orElse(null) : null;
  }

  private static Optional<StudentBelief> belief(CheckComparison compared) {
    return compared.onAverage().value();
  }

  private Answer<SampleDifference> plain() {
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
