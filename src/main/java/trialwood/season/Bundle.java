package trialwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkState;

/**
 * Work of one kind in one state, which is one line until somebody opens it.
 *
 * @param tasks at least one, the oldest first
 */
public record Bundle(List<Task> tasks) {

  /** So many lines are read faster than a heading over them is opened. */
  private static final int FEW = 3;

  public Bundle {
    tasks = List.copyOf(tasks);
  }

  /** Bundles in the order in which their first task stands. */
  static List<Bundle> of(List<Task> tasks) {
    Map<List<Object>, List<Task>> bundles = new LinkedHashMap<>();
    for (Task task : tasks) {
      bundles
          .computeIfAbsent(List.of(task.state(), task.work().kind()), none -> new ArrayList<>())
          .add(task);
    }
    return bundles.values().stream().map(Bundle::new).toList();
  }

  public WorkKind kind() {
    return tasks.get(0).work().kind();
  }

  public WorkState state() {
    return tasks.get(0).state();
  }

  public boolean isFew() {
    return tasks.size() <= FEW;
  }

  public int size() {
    return tasks.size();
  }

  /** The day of the one that is longest due. */
  public LocalDate first() {
    return tasks.get(0).day();
  }

  public LocalDate last() {
    return tasks.get(tasks.size() - 1).day();
  }
}
