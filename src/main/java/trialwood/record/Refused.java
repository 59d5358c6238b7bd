package trialwood.record;

import java.util.List;
import java.util.stream.Collectors;

/** An impossible record: nothing was stored, and each problem names its field. */
public class Refused extends RuntimeException {

  private final transient List<Problem> problems;

  public Refused(List<Problem> problems) {
    super(problems.stream().map(Problem::sentence).collect(Collectors.joining(" ")));
    this.problems = List.copyOf(problems);
  }

  public Refused(String field, String sentence) {
    this(List.of(new Problem(field, sentence)));
  }

  /** Somebody else stored a change after the page was opened. */
  public static Refused changedMeanwhile() {
    return new Refused(
        "version", "Somebody else changed this meanwhile. Look at both, then send it again.");
  }

  public List<Problem> problems() {
    return problems;
  }
}
