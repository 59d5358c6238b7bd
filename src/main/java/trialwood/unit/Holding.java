package trialwood.unit;

import java.time.LocalDate;
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

  private static Optional<Tie> latest(Collection<Tie> sayings, LocalDate day) {
    return sayings.stream()
        .filter(tie -> tie.covers(day))
        .max(Comparator.comparing(tie -> Objects.requireNonNull(tie.id())));
  }
}
