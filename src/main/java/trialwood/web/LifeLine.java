package trialwood.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The planted row of a candidate: the stages it has passed, the one where it stands, those ahead.
 */
public record LifeLine(List<Stage> stages) {

  public LifeLine {
    stages = List.copyOf(stages);
  }

  /** Where a stage lies as seen from the candidate. */
  public enum State {
    PASSED,
    PRESENT,
    /** Here it was discarded. */
    STOPPED,
    AHEAD
  }

  /**
   * What is known of a stage before the row is drawn.
   *
   * @param sentence a few words, "20 potted Jul 2022"; empty when nothing is recorded there
   */
  public record Known(String name, String sentence) {}

  /** A stage as drawn. */
  public record Stage(String name, String sentence, State state) {

    public boolean present() {
      return state == State.PRESENT || state == State.STOPPED;
    }

    /** The class in the stylesheet. */
    public String look() {
      return state.name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * The row of a candidate that stands at the named stage. What is recorded of a later stage is
   * shown with the words "ahead of its gate".
   *
   * @throws IllegalArgumentException if the stage is none of those given
   */
  public static LifeLine growing(String present, List<Known> stages) {
    return drawn(present, State.PRESENT, stages);
  }

  /** As {@link #growing}, of a candidate that was discarded at the named stage. */
  public static LifeLine stopped(String present, List<Known> stages) {
    return drawn(present, State.STOPPED, stages);
  }

  /** The row in one sentence. */
  public String sentence() {
    return stages.stream()
        .filter(Stage::present)
        .findFirst()
        .map(s -> (s.state == State.STOPPED ? "Discarded at: " : "Stands at: ") + s.name)
        .orElse("Life line");
  }

  private static LifeLine drawn(String present, State here, List<Known> stages) {
    List<Stage> row = new ArrayList<>();
    State state = State.PASSED;
    for (Known stage : stages) {
      if (stage.name.equals(present)) {
        row.add(new Stage(stage.name, stage.sentence, here));
        state = State.AHEAD;
      } else {
        row.add(new Stage(stage.name, sentence(stage, state), state));
      }
    }
    if (state != State.AHEAD) {
      throw new IllegalArgumentException("no stage is called " + present);
    }
    return new LifeLine(row);
  }

  private static String sentence(Known stage, State state) {
    return state == State.AHEAD && !stage.sentence.isEmpty()
        ? stage.sentence + ", ahead of its gate"
        : stage.sentence;
  }
}
