package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trialwood.web.LifeLine.State.AHEAD;
import static trialwood.web.LifeLine.State.PASSED;
import static trialwood.web.LifeLine.State.PRESENT;
import static trialwood.web.LifeLine.State.STOPPED;

import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.web.LifeLine.Known;
import trialwood.web.LifeLine.Stage;

class LifeLineTest {

  private final List<Known> stages =
      List.of(
          new Known("Field", "tagged 19 Aug 2021"),
          new Known("Propagation", "66 of 72 rooted"),
          new Known("Container", "20 potted Jul 2022"),
          new Known("Trial", ""));

  @Test
  void what_lies_behind_is_passed_and_what_lies_before_is_ahead() {
    assertThat(LifeLine.growing("Propagation", stages).stages())
        .extracting(Stage::state)
        .containsExactly(PASSED, PRESENT, AHEAD, AHEAD);
  }

  @Test
  void a_stage_recorded_before_its_gate_says_so() {
    assertThat(LifeLine.growing("Propagation", stages).stages())
        .extracting(Stage::sentence)
        .containsExactly(
            "tagged 19 Aug 2021", "66 of 72 rooted", "20 potted Jul 2022, ahead of its gate", "");
  }

  @Test
  void a_discarded_candidate_stops_where_it_was() {
    LifeLine line = LifeLine.stopped("Container", stages);
    assertThat(line.stages())
        .extracting(Stage::state)
        .containsExactly(PASSED, PASSED, STOPPED, AHEAD);
    assertThat(line.sentence()).isEqualTo("Discarded at: Container");
  }

  @Test
  void the_row_says_where_the_candidate_stands() {
    assertThat(LifeLine.growing("Trial", stages).sentence()).isEqualTo("Stands at: Trial");
  }

  @Test
  void a_stage_that_is_not_in_the_row_is_refused() {
    assertThatThrownBy(() -> LifeLine.growing("Orchard", stages))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Orchard");
  }
}
