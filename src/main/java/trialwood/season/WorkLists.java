package trialwood.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.record.CodeKey;
import trialwood.web.Doors;

/** Asks every stage what is due and what comes. */
@Service
public class WorkLists {

  private final List<WorkSource> sources;
  private final Doors doors;

  WorkLists(List<WorkSource> sources, Doors doors) {
    this.sources = sources;
    this.doors = doors;
  }

  /**
   * The work of a day and of the days after it.
   *
   * @param role who asks: each task leads to a page that this role may open
   * @param daysAhead 0 for the day alone
   */
  public WorkList on(LocalDate today, int daysAhead, Role role) {
    LocalDate until = today.plusDays(daysAhead);
    Map<String, String> closed = new TreeMap<>();
    sources.forEach(
        source ->
            source
                .closedPlaces(today)
                .forEach((place, reason) -> closed.put(CodeKey.of(place), reason)));
    Stream<DueWork> due =
        sources.stream()
            .flatMap(source -> source.due(today).stream())
            .map(work -> keptOut(work, closed));
    Stream<DueWork> coming =
        daysAhead == 0
            ? Stream.empty()
            : sources.stream().flatMap(source -> source.coming(today, until).stream());
    return new WorkList(
        today,
        Stream.concat(due, coming)
            .map(work -> new Task(work, work.state(today), wayIn(work, role)))
            .toList());
  }

  /** A place lies in another whose words it begins with: mist house, bench 2. */
  private static DueWork keptOut(DueWork work, Map<String, String> closed) {
    String place = CodeKey.of(work.place());
    return closed.entrySet().stream()
        .filter(house -> place.startsWith(house.getKey()))
        .findFirst()
        .map(house -> work.blockedBy(house.getValue()))
        .orElse(work);
  }

  private @Nullable String wayIn(DueWork work, Role role) {
    if (doors.opens(role, work.href())) {
      return work.href();
    }
    return doors.opens(role, work.readHref()) ? work.readHref() : null;
  }
}
