package trialwood.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkState;

/**
 * The work of a day as one role meets it: by place, capitals set aside, and there what is overdue
 * first.
 */
public record WorkList(LocalDate today, List<Task> tasks) {

  private static final Comparator<Task> ORDER =
      Comparator.comparing((Task task) -> task.work().place(), String.CASE_INSENSITIVE_ORDER)
          .thenComparing(Task::state)
          .thenComparing(Task::day);

  public WorkList {
    // a stable sort: within a day the order of the stage, which is the order along the bench
    tasks = tasks.stream().sorted(ORDER).toList();
  }

  public WorkList only(Predicate<Task> which) {
    return new WorkList(today, tasks.stream().filter(which).toList());
  }

  public long count(WorkState state) {
    return tasks.stream().filter(task -> task.state() == state).count();
  }

  /** What people can set about, or would if nothing kept them from it. */
  public List<PlaceList> places() {
    return byPlace(
        tasks.stream().filter(task -> task.state().compareTo(WorkState.BLOCKED) <= 0).toList());
  }

  /** What comes, day by day. */
  public List<DayList> days() {
    return tasks.stream()
        .filter(task -> task.state() == WorkState.COMING)
        .collect(Collectors.groupingBy(Task::day, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(day -> new DayList(day.getKey(), byPlace(day.getValue())))
        .toList();
  }

  /** What was missed, whatever its place, the oldest first. */
  public List<Bundle> missed() {
    return Bundle.of(
        tasks.stream()
            .filter(task -> task.state() == WorkState.MISSED)
            .sorted(Comparator.comparing(Task::day))
            .toList());
  }

  /** The places of the list, each once, whatever its capitals. */
  public List<String> placeNames() {
    return tasks.stream()
        .map(task -> task.work().place())
        .collect(
            Collectors.toMap(
                place -> place, place -> place, (one, same) -> one, WorkList::foldingCapitals))
        .values()
        .stream()
        .toList();
  }

  /** The kinds of the list, by their labels. */
  public List<WorkKind> kinds() {
    return tasks.stream()
        .map(task -> task.work().kind())
        .distinct()
        .sorted(Comparator.comparing(WorkKind::label))
        .toList();
  }

  private static List<PlaceList> byPlace(List<Task> tasks) {
    return tasks.stream()
        .collect(
            Collectors.groupingBy(
                task -> task.work().place(), WorkList::foldingCapitals, Collectors.toList()))
        .entrySet()
        .stream()
        .map(place -> new PlaceList(place.getKey(), Bundle.of(place.getValue())))
        .toList();
  }

  private static <V> Map<String, V> foldingCapitals() {
    return new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  }
}
