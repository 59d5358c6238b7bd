package trialwood.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.candidate.Stage;
import trialwood.gate.Choice;
import trialwood.gate.Review;
import trialwood.gate.Reviews;
import trialwood.propagation.BenchSpace;
import trialwood.propagation.StandingTray;
import trialwood.site.Bench;
import trialwood.site.Benches;

/** What stands on which bench on a day, and which space is held by candidates that fall short. */
@Component
class BenchMap {

  private final Benches benches;
  private final BenchSpace space;
  private final Reviews reviews;
  private final JdbcClient jdbc;

  BenchMap(Benches benches, BenchSpace space, Reviews reviews, JdbcClient jdbc) {
    this.benches = benches;
    this.space = space;
    this.reviews = reviews;
    this.jdbc = jdbc;
  }

  /**
   * A place along a bench.
   *
   * @param tray what stands on it; absent where it is free
   * @param fallsShort why its candidate holds the space to no use, by the records so far
   */
  record Place(int number, @Nullable StandingTray tray, @Nullable String fallsShort) {}

  /** A bench with its places in order. */
  record Filled(Bench bench, List<Place> places) {

    public long taken() {
      return places.stream().filter(place -> place.tray() != null).count();
    }

    public long free() {
      return places.size() - taken();
    }

    public long fallingShort() {
      return places.stream().filter(place -> place.fallsShort() != null).count();
    }

    /** Cells without a cutting in the trays that stand on it. */
    public int emptyCells() {
      return places.stream()
          .flatMap(place -> Optional.ofNullable(place.tray()).stream())
          .mapToInt(tray -> tray.cells() - tray.stuck())
          .sum();
    }
  }

  /**
   * The benches on a day.
   *
   * @param elsewhere trays without a bench or a numbered place, each beside why it falls short
   */
  record Shown(List<Filled> benches, List<Place> elsewhere) {}

  /** How the benches stand at the end of a day. */
  Shown on(LocalDate day) {
    List<StandingTray> trays = space.on(day);
    Map<UUID, String> without = fallingShort(trays, day);
    Map<UUID, Map<Integer, StandingTray>> placed = new HashMap<>();
    List<Place> elsewhere = new ArrayList<>();
    List<Bench> all = benches.findAllByOrderByCode();
    Map<UUID, Integer> room =
        all.stream()
            .collect(Collectors.toMap(it -> Objects.requireNonNull(it.id()), Bench::places));
    for (StandingTray tray : trays) {
      UUID bench = tray.benchId();
      int number = tray.placeNumber();
      boolean isOnMap =
          bench != null
              && number >= 1
              && number <= room.get(bench)
              && placed.computeIfAbsent(bench, it -> new HashMap<>()).putIfAbsent(number, tray)
                  == null;
      if (!isOnMap) {
        elsewhere.add(new Place(0, tray, without.get(tray.accessionId())));
      }
    }
    return new Shown(all.stream().map(bench -> filled(bench, placed, without)).toList(), elsewhere);
  }

  private static Filled filled(
      Bench bench, Map<UUID, Map<Integer, StandingTray>> placed, Map<UUID, String> without) {
    Map<Integer, StandingTray> here = placed.getOrDefault(bench.id(), Map.of());
    return new Filled(
        bench,
        IntStream.rangeClosed(1, bench.places())
            .mapToObj(
                number -> {
                  StandingTray tray = here.get(number);
                  return new Place(
                      number, tray, tray == null ? null : without.get(tray.accessionId()));
                })
            .toList());
  }

  /** Candidates on the bench that were discarded, or whose rooting falls short by the records. */
  private Map<UUID, String> fallingShort(List<StandingTray> trays, LocalDate day) {
    Set<UUID> candidates =
        candidates(trays.stream().map(StandingTray::accessionId).collect(Collectors.toSet()));
    Map<UUID, String> why = new HashMap<>();
    for (Review review : reviews.of(Stage.PROPAGATION, candidates, day).values()) {
      if (review.line() == Choice.DISCARD) {
        why.put(review.accessionId(), review.because());
      }
    }
    discarded(candidates, day).forEach(candidate -> why.put(candidate, "Discarded."));
    return why;
  }

  private Set<UUID> candidates(Set<UUID> accessions) {
    return accessions.isEmpty()
        ? Set.of()
        : Set.copyOf(
            jdbc.sql("select accession_id from candidate where accession_id in (:accessions)")
                .param("accessions", accessions)
                .query(UUID.class)
                .list());
  }

  /** Those whose last decision up to the day was a discard that nobody took back. */
  private List<UUID> discarded(Set<UUID> candidates, LocalDate day) {
    return candidates.isEmpty()
        ? List.of()
        : jdbc.sql(
                """
                select d.accession_id from decision d
                where d.accession_id in (:candidates) and d.choice = 'DISCARD' and d.on_date <= :day
                  and not exists (select 1 from candidate_event e
                                  where e.accession_id = d.accession_id and e.kind = 'REOPENED'
                                    and e.on_date >= d.on_date and e.on_date <= :day)
                """)
            .param("candidates", candidates)
            .param("day", day)
            .query(UUID.class)
            .list();
  }
}
