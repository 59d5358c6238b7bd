package trialwood.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Refused;

/**
 * What is unusual about a form but not impossible. It comes back with each question beside its
 * field and, from {@code fragments/field :: checked}, a box for what was found on checking. Sent
 * again with an answer it is stored, question and answer beside it; a question that was not on the
 * page before is asked all the same.
 *
 * <pre>{@code
 * Questions questions = new Questions(form.asked(), form.checked());
 * questions.ask(Treatment.questions(..)); // a Problem for each unusual value
 * Checked checked = questions.orAsk(); // stored with the record; nothing where all was usual
 * }</pre>
 *
 * A form that may be asked about carries {@code @Nullable String asked} and {@code checked}.
 */
public final class Questions {

  private final String read;
  private final String answer;
  private final List<Problem> questions = new ArrayList<>();

  /**
   * @param read the questions that stood on the page the form was sent from
   * @param answer what was found on checking; blank before anybody asked
   */
  public Questions(@Nullable String read, @Nullable String answer) {
    this.read = read == null ? "" : read;
    this.answer = answer == null ? "" : answer.strip();
  }

  /** Asks what each of these says, beside its field. */
  public void ask(List<Problem> unusual) {
    questions.addAll(unusual);
  }

  /**
   * @return questions and answer; nothing where there was no question
   * @throws Refused with the questions, until somebody has read and answered every one
   */
  public @Nullable Checked orAsk() {
    if (questions.isEmpty()) {
      return null;
    }
    boolean news = questions.stream().anyMatch(question -> !read.contains(question.sentence()));
    if (answer.isEmpty() || news) {
      List<Problem> said = new ArrayList<>(questions);
      said.add(new Problem("checked", "If it is right all the same, say here what you found."));
      throw new Refused(said);
    }
    return new Checked(
        questions.stream().map(Problem::sentence).distinct().collect(Collectors.joining(" ")),
        answer);
  }
}
