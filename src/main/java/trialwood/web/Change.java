package trialwood.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trialwood.record.History.Past;

/**
 * One change to a record that people edit by hand: who, when, old and new.
 *
 * @param first whether the record began with it; then nothing differs
 */
public record Change(Instant at, String username, boolean first, List<Difference> differences) {

  /**
   * The changes behind a history, newest first; one that changed nothing people read is left out.
   *
   * @param words what a record says, label by label
   */
  public static <T> List<Change> of(List<Past<T>> history, Function<T, Map<String, String>> words) {
    List<Change> changes = new ArrayList<>();
    for (int at = 0; at < history.size(); at++) {
      Past<T> past = history.get(at);
      boolean first = at == history.size() - 1;
      List<Difference> differences =
          first
              ? List.of()
              : Difference.between(
                  words.apply(history.get(at + 1).then()), words.apply(past.then()));
      if (first || !differences.isEmpty()) {
        changes.add(new Change(past.at(), past.username(), first, differences));
      }
    }
    return Collections.unmodifiableList(changes);
  }
}
