package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Refused;

class QuestionsTest {

  private static final Problem STRONG = new Problem("ppm", "12,000 ppm is 1.2 %.");
  private static final Problem LONG = new Problem("lengthMm", "160 mm is long.");

  private static @Nullable Checked asked(
      @Nullable String read, @Nullable String answer, Problem... unusual) {
    Questions questions = new Questions(read, answer);
    questions.ask(List.of(unusual));
    return questions.orAsk();
  }

  @Test
  void what_is_usual_is_stored_without_a_word() {
    assertThat(asked(null, null)).isNull();
    assertThat(asked("", "an answer to nothing")).isNull();
  }

  @Test
  void what_is_unusual_comes_back_beside_its_field_with_a_box_for_the_answer() {
    assertThatThrownBy(() -> asked(null, " ", STRONG, LONG))
        .isInstanceOfSatisfying(
            Refused.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(Problem::field)
                    .containsExactly("ppm", "lengthMm", "checked"));
  }

  @Test
  void the_answer_is_kept_with_the_questions_that_were_read() {
    Checked checked =
        Objects.requireNonNull(
            asked(
                "12,000 ppm is 1.2 %.,160 mm is long.,If it is right …",
                " measured twice ", STRONG, LONG));
    assertThat(checked.asked()).isEqualTo("12,000 ppm is 1.2 %. 160 mm is long.");
    assertThat(checked.checked()).isEqualTo("measured twice");
  }

  @Test
  void an_answer_does_not_silence_a_question_nobody_has_read() {
    assertThatThrownBy(() -> asked("12,000 ppm is 1.2 %.", "measured twice", STRONG, LONG))
        .hasMessageContaining("160 mm is long.");
  }
}
