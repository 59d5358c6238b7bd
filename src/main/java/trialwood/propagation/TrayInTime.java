package trialwood.propagation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.time.RootedBetween;

/**
 * What was seen of one tray, as days between which its cuttings rooted. Every look, and the final
 * count, says of all stuck how many had rooted by its day: the lifted ones stand for the living,
 * the dead never root. Weights are thousandths of a cutting.
 */
record TrayInTime(List<RootedBetween> seen) {

  private static final int CUTTING = 1000;

  /** The trays with at least one look, in the order of their labels. */
  static List<TrayInTime> of(List<LookSample> looks, List<TrayOutcome> closed) {
    Map<String, TrayOutcome> counted =
        closed.stream().collect(Collectors.toMap(TrayOutcome::tray, it -> it));
    var trays = new ArrayList<TrayInTime>();
    looks.stream()
        .filter(look -> look.inTray() > 0)
        .collect(Collectors.groupingBy(LookSample::tray))
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(each -> trays.add(of(each.getValue(), counted.get(each.getKey()))));
    return trays;
  }

  private static TrayInTime of(List<LookSample> looks, @Nullable TrayOutcome count) {
    var seen = new ArrayList<RootedBetween>();
    for (LookSample look : looks) {
      double living = Math.min(1, (double) look.alive() / look.inTray());
      long rooted = Math.round(CUTTING * living * look.rooted());
      add(seen, look.day(), rooted, (long) CUTTING * look.lifted() - rooted);
    }
    if (count != null && count.countedOn().isAfter(count.stuckOn())) {
      add(
          seen,
          count.countedOn().toEpochDay() - count.stuckOn().toEpochDay(),
          (long) CUTTING * count.rooted(),
          (long) CUTTING * (count.stuck() - count.rooted()));
    }
    return new TrayInTime(List.copyOf(seen));
  }

  private static void add(List<RootedBetween> seen, double day, long rooted, long not) {
    if (rooted > 0) {
      seen.add(new RootedBetween(0, day, Math.toIntExact(rooted)));
    }
    if (not > 0) {
      seen.add(RootedBetween.notBy(day, Math.toIntExact(not)));
    }
  }

  /** The same intervals of several trays as one, so that a fit takes no longer for many trays. */
  static List<RootedBetween> pooled(List<RootedBetween> seen) {
    var weights = new TreeMap<Double, int[]>();
    for (RootedBetween one : seen) {
      int[] of = weights.computeIfAbsent(one.rooted() ? one.by() : one.after(), day -> new int[2]);
      of[one.rooted() ? 0 : 1] += one.cuttings();
    }
    var pooled = new ArrayList<RootedBetween>();
    weights.forEach((day, of) -> add(pooled, day, of[0], of[1]));
    return pooled;
  }
}
