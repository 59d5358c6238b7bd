package trialwood.season;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import trialwood.evidence.WorkState;
import trialwood.people.Role;
import trialwood.web.ListQuery;
import trialwood.web.Typed;

/**
 * Which part of the work is shown, as the address says it.
 *
 * @param query place, kind, who and state, each where it is set
 * @param who the role whose usual work is shown; {@link #EVERYONE} for all
 * @param days days ahead, 0 for today alone
 */
public record WorkFilter(ListQuery query, String who, int days) implements Predicate<Task> {

  public static final String EVERYONE = "everyone";

  private static final int FARTHEST = 366;

  /** Bench staff and dossier preparers see their own work first, the others everybody's. */
  public static WorkFilter of(Map<String, String> parameters, Role role) {
    ListQuery query = ListQuery.of(parameters, "place", "kind", "who", "state", "days");
    String who = query.filter("who");
    String days = query.filter("days");
    return new WorkFilter(
        query,
        who == null ? usual(role) : who,
        days == null ? 0 : Math.min(FARTHEST, Typed.count(days).orElse(0)));
  }

  /** Whether the task is of those that the role sees first. */
  static boolean isUsual(Task task, Role role) {
    return usual(role).equals(EVERYONE) || task.work().kind().who() == role;
  }

  private static String usual(Role role) {
    return role == Role.BENCH || role == Role.DOSSIER ? role.word() : EVERYONE;
  }

  @Override
  public boolean test(Task task) {
    return isAt(task) && isState(task);
  }

  /** For a sheet to carry around: nothing that was missed, unless the address asks for it. */
  public Predicate<Task> forTheDay() {
    return query.filter("state") == null
        ? task -> test(task) && task.state() != WorkState.MISSED
        : this;
  }

  /** The same, whatever the state: what the counts on top are of. */
  public boolean isAt(Task task) {
    return isSame(query.filter("place"), task.work().place())
        && isSame(query.filter("kind"), task.work().kind().key())
        && (who.equals(EVERYONE) || isSame(who, task.work().kind().who().word()))
        && (query.text().isEmpty() || says(task, query.text()));
  }

  private boolean isState(Task task) {
    return isSame(query.filter("state"), task.state().name());
  }

  private static boolean isSame(@Nullable String asked, String is) {
    return asked == null || asked.equalsIgnoreCase(is);
  }

  private static boolean says(Task task, String text) {
    String said = task.work().what() + " " + task.work().why();
    return said.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
  }
}
