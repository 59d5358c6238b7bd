package trialwood.unit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;

/**
 * What follows from all that was said of one unit: its accession in one period. The holdings of a
 * unit neither overlap nor repeat.
 *
 * @param until the first day on which it no longer holds; {@link #OPEN} when none is known
 */
record Holding(UUID unitId, LocalDate from, LocalDate until, UUID accessionId, long tieId) {

  /** Stands for "no end known", so that queries compare dates without asking for absence. */
  static final LocalDate OPEN = LocalDate.of(9999, 12, 31);

  /** Settles the sayings about one unit: on each day the latest saying that covers it holds. */
  static List<Holding> settle(Collection<Tie> sayings) {
    TreeSet<LocalDate> edges = new TreeSet<>();
    for (Tie tie : sayings) {
      edges.add(tie.fromDate());
      edges.add(Objects.requireNonNullElse(tie.untilDate(), OPEN));
    }
    return edges.stream()
        .flatMap(
            edge ->
                Optional.ofNullable(edges.higher(edge)).stream()
                    .flatMap(
                        next ->
                            latest(sayings, edge).stream()
                                .map(
                                    tie ->
                                        new Holding(
                                            tie.unitId(),
                                            edge,
                                            next,
                                            tie.accessionId(),
                                            Objects.requireNonNull(tie.id())))))
        .toList();
  }

  /**
   * What the earlier sayings make of the days of a later one. The first of them is stretched back
   * to its first day, on which a unit may not have been set up yet.
   */
  static List<Holding> within(Tie later, Collection<Tie> earlier) {
    LocalDate end = Objects.requireNonNullElse(later.untilDate(), OPEN);
    List<Holding> held =
        settle(earlier).stream()
            .filter(it -> it.from().isBefore(end) && it.until().isAfter(later.fromDate()))
            .toList();
    List<Holding> within = new ArrayList<>();
    for (Holding it : held) {
      within.add(
          new Holding(
              it.unitId(),
              within.isEmpty() || it.from().isBefore(later.fromDate())
                  ? later.fromDate()
                  : it.from(),
              it.until().isAfter(end) ? end : it.until(),
              it.accessionId(),
              it.tieId()));
    }
    return within;
  }

  private static Optional<Tie> latest(Collection<Tie> sayings, LocalDate day) {
    return sayings.stream()
        .filter(tie -> tie.covers(day))
        .max(Comparator.comparing(tie -> Objects.requireNonNull(tie.id())));
  }
}
