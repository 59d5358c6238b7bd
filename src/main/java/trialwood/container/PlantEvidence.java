package trialwood.container;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.analysis.means.PlantSample;
import trialwood.lineage.CheckRole;

/** What was seen on numbered plants, plant by plant, in the lot each stood in that day. */
@Component
class PlantEvidence {

  /** A round of measuring may take as long as this; what is older belongs to the round before. */
  private static final int ROUND_DAYS = 14;

  private static final String SQL =
      """
      select h.accession_id, o.unit_id as plant_id, l.unit_id as lot_id, u.label as lot,
             l.container_class_id as class_id, l.potted_on, o.on_date,
             o.number_value as number, o.none_because
      from observation o
      join plant p on p.unit_id = o.unit_id
      join holding h on h.unit_id = o.unit_id
        and h.from_date <= o.on_date and h.until_date > o.on_date
      join plant_place w on w.plant_id = o.unit_id and w.from_date <= o.on_date
        and not exists (select 1 from plant_place later
                        where later.plant_id = w.plant_id
                          and later.from_date > w.from_date and later.from_date <= o.on_date)
      join lot l on l.unit_id = w.lot_id
      join unit u on u.id = l.unit_id
      where h.accession_id in (%s) and o.trait_id = :trait and o.on_date <= :asOf
        and (o.number_value is not null or o.none_because = 'NOT_YET_FLOWERING')
        and not exists (select 1 from observation later where later.supersedes_id = o.id)
      order by o.on_date, o.recorded_at
      """;

  private static final String CHECKS =
      """
      select c.accession_id from crop_check c
      join trait t on t.crop_id = c.crop_id
      where t.id = :trait and c.role = :role
      """;

  private final JdbcClient jdbc;

  PlantEvidence(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** One plant on one day. A plant that had no flower yet has no number. */
  record Seen(
      UUID accessionId,
      UUID plantId,
      UUID lotId,
      String lot,
      UUID classId,
      LocalDate pottedOn,
      LocalDate onDate,
      @Nullable Double number,
      @Nullable String noneBecause) {

    boolean flowers() {
      return number != null && number > 0;
    }
  }

  /** The plants of one lot in one round, each with its latest value. */
  record Round(List<Seen> plants) {

    String lot() {
      return plants.get(0).lot();
    }

    UUID classId() {
      return plants.get(0).classId();
    }

    LocalDate newest() {
      return plants.stream().map(Seen::onDate).max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Of the plants with a number; none may have one. */
    List<Double> numbers() {
      return plants.stream().flatMap(seen -> Stream.ofNullable(seen.number())).toList();
    }

    PlantSample sample() {
      return PlantSample.of(numbers());
    }

    long flowering() {
      return plants.stream().filter(Seen::flowers).count();
    }
  }

  /** The latest round of each accession: in its newest lot, among those seen on the last day. */
  Map<UUID, Round> latest(Set<UUID> accessions, UUID trait, LocalDate asOf) {
    return seen(SQL.formatted(":accessions"), trait, asOf, "accessions", accessions).stream()
        .collect(
            Collectors.groupingBy(
                Seen::accessionId,
                Collectors.collectingAndThen(
                    Collectors.toList(), seen -> round(seen, seen.get(seen.size() - 1)))));
  }

  /** What was ever seen on the checks of a role, for the crop of the trait. */
  List<Seen> ofChecks(CheckRole role, UUID trait, LocalDate asOf) {
    return seen(SQL.formatted(CHECKS), trait, asOf, "role", role.name());
  }

  /**
   * The check's plants to set beside a round: pots of the same class, in the same calendar year,
   * the round nearest in time.
   */
  @Nullable Round beside(Round round, List<Seen> checks) {
    List<Seen> alike =
        checks.stream()
            .filter(seen -> seen.classId().equals(round.classId()))
            .filter(seen -> seen.onDate().getYear() == round.newest().getYear())
            .toList();
    return alike.stream()
        .min(Comparator.comparingLong(seen -> daysApart(seen.onDate(), round.newest())))
        .map(nearest -> round(alike, nearest))
        .orElse(null);
  }

  private static long daysApart(LocalDate one, LocalDate other) {
    return Math.abs(one.toEpochDay() - other.toEpochDay());
  }

  private static Round round(List<Seen> seen, Seen last) {
    LocalDate newest = last.onDate();
    Seen newestLot =
        seen.stream()
            .filter(it -> it.onDate().equals(newest))
            .max(Comparator.comparing(Seen::pottedOn).thenComparing(Seen::lot))
            .orElse(last);
    // a later value of the same plant overwrites the earlier: rows come in the order of their days
    Map<UUID, Seen> latest =
        seen.stream()
            .filter(it -> it.lotId().equals(newestLot.lotId()))
            .filter(it -> !it.onDate().isAfter(newest))
            .filter(it -> !it.onDate().isBefore(newest.minusDays(ROUND_DAYS)))
            .collect(Collectors.toMap(Seen::plantId, it -> it, (before, after) -> after));
    return new Round(List.copyOf(latest.values()));
  }

  private List<Seen> seen(String sql, UUID trait, LocalDate asOf, String parameter, Object value) {
    return jdbc.sql(sql)
        .param("trait", trait)
        .param("asOf", asOf)
        .param(parameter, value)
        .query(Seen.class)
        .list();
  }
}
