package trialwood.container;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;
import trialwood.web.Measures;

/**
 * Asks for two counts a year of every lot with living plants: in April, when the winter's dead can
 * be told, and in October, at the end of the season; and between them to cover it in November and
 * uncover it in April. Common practice, no source.
 */
@Component
class ContainerWork implements WorkSource {

  private static final String COVERS =
      """
      select u.label, a.code, l.yard,
             (select max(c.on_date) from lot_care c
              where c.lot_id = l.unit_id and c.kind = 'COVERED' and c.on_date >= :autumn
             ) as covered,
             (select max(c.on_date) from lot_care c
              where c.lot_id = l.unit_id and c.kind = 'UNCOVERED' and c.on_date >= :autumn
             ) as uncovered
      from lot l
      join unit u on u.id = l.unit_id
      join holding h on h.unit_id = l.unit_id
        and h.from_date <= :today and h.until_date > :today
      join accession a on a.id = h.accession_id
      where l.potted_on <= :today
        and l.potted > (select coalesce(sum(x.number), 0) from lot_loss x
                        where x.lot_id = l.unit_id
                          and not exists (select 1 from lot_loss later
                                          where later.supersedes_id = x.id))
                     + (select coalesce(sum(x.number), 0) from lot_outgoing x
                        where x.lot_id = l.unit_id
                          and not exists (select 1 from lot_outgoing later
                                          where later.supersedes_id = x.id))
      order by l.yard, u.label
      """;

  private final JdbcClient jdbc;
  private final Measures measures;

  ContainerWork(JdbcClient jdbc, Measures measures) {
    this.jdbc = jdbc;
    this.measures = measures;
  }

  private record Uncounted(
      String label,
      String code,
      @Nullable String yard,
      LocalDate pottedOn,
      @Nullable LocalDate counted) {}

  /**
   * @param covered last day of this winter on which it was covered
   * @param uncovered last day on which it was uncovered
   */
  private record Covered(
      String label,
      String code,
      @Nullable String yard,
      @Nullable LocalDate covered,
      @Nullable LocalDate uncovered) {

    boolean isUnderCover() {
      return covered != null && (uncovered == null || uncovered.isBefore(covered));
    }
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return Stream.concat(counts(today).stream(), covers(today).stream()).toList();
  }

  private List<DueWork> counts(LocalDate today) {
    LocalDate from = lastTurn(today);
    return jdbc
        .sql(
            """
            select u.label, a.code, l.yard, l.potted_on, c.counted
            from lot l
            join unit u on u.id = l.unit_id
            join holding h on h.unit_id = l.unit_id
              and h.from_date <= :today and h.until_date > :today
            join accession a on a.id = h.accession_id
            left join (select lot_id, max(on_date) as counted from lot_count group by lot_id) c
              on c.lot_id = l.unit_id
            where l.potted_on < :turn and (c.counted is null or c.counted < :turn)
              and l.potted > (select coalesce(sum(x.number), 0) from lot_loss x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_loss later
                                                where later.supersedes_id = x.id))
                           + (select coalesce(sum(x.number), 0) from lot_outgoing x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_outgoing later
                                                where later.supersedes_id = x.id))
            order by l.yard, u.label
            """)
        .param("today", today)
        .param("turn", from)
        .query(Uncounted.class)
        .list()
        .stream()
        .map(
            lot ->
                new DueWork(
                    Objects.requireNonNullElse(lot.yard(), "containers"),
                    from.withDayOfMonth(from.lengthOfMonth()),
                    "Count %s in lot %s".formatted(lot.code(), lot.label()),
                    lot.counted() == null
                        ? "potted on %s, never counted".formatted(measures.date(lot.pottedOn()))
                        : "last counted on %s".formatted(measures.date(lot.counted())),
                    "/containers/%s/count".formatted(lot.label())))
        .toList();
  }

  /** Lots with living plants whose cover is not as the season wants it. */
  private List<DueWork> covers(LocalDate today) {
    boolean cold = today.getMonth() == Month.NOVEMBER || today.getMonth() == Month.DECEMBER;
    boolean warm = today.getMonth() == Month.APRIL || today.getMonth() == Month.MAY;
    if (!cold && !warm) {
      return List.of();
    }
    LocalDate autumn = LocalDate.of(today.getYear() - (warm ? 1 : 0), Month.SEPTEMBER, 1);
    LocalDate until = LocalDate.of(today.getYear(), warm ? Month.APRIL : Month.NOVEMBER, 30);
    return jdbc
        .sql(COVERS)
        .param("today", today)
        .param("autumn", autumn)
        .query(Covered.class)
        .list()
        .stream()
        .filter(lot -> cold ? lot.covered() == null : lot.isUnderCover())
        .map(
            lot ->
                new DueWork(
                    Objects.requireNonNullElse(lot.yard(), "containers"),
                    until,
                    "%s %s in lot %s"
                        .formatted(cold ? "Cover" : "Uncover", lot.code(), lot.label()),
                    lot.covered() == null
                        ? "not covered this winter"
                        : "covered since %s".formatted(measures.date(lot.covered())),
                    "/containers/%s/winter".formatted(lot.label())))
        .toList();
  }

  private static LocalDate lastTurn(LocalDate today) {
    if (today.getMonthValue() >= Month.OCTOBER.getValue()) {
      return LocalDate.of(today.getYear(), Month.OCTOBER, 1);
    }
    return today.getMonthValue() >= Month.APRIL.getValue()
        ? LocalDate.of(today.getYear(), Month.APRIL, 1)
        : LocalDate.of(today.getYear() - 1, Month.OCTOBER, 1);
  }
}
